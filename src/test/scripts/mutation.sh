#!/usr/bin/env bash
# Puts faults into the compiled classes of one package and looks whether the tests notice (PIT).
# usage: mutation.sh PACKAGE...     pruning, cuttings, feeding, mulching, water, season, care;
#                                   planner: those classes of care that make a plan out of the rules
# Asked are the package's own tests, and those tests of care and the commands that are about that craft.
# Prints, for each package, how many of the faults were noticed; the report is in target/pit-reports.
set -euo pipefail
cd "$(dirname "$0")/../../.."

tests_of() {
  case $1 in
    pruning) echo "$1.*,care.PruningAdvisorTest,care.StemFaultsTest,care.PastPruningTest,cli.PruneCommandTest" ;;
    cuttings) echo "$1.*,care.CuttingsAdvisorTest,cli.CuttingsCommandTest,cli.CuttingsGardenTest" ;;
    feeding) echo "$1.*,care.FeedingAdviceTest,care.FeedTimingTest,care.BedLedgerTest,care.ShoppingListTest,cli.FeedCommandTest,cli.SoilAndMulchCommandTest,cli.LedgerCommandTest,cli.NoteFeedTest" ;;
    mulching) echo "$1.*,cli.SoilAndMulchCommandTest" ;;
    water) echo "$1.*,cli.WaterCommandTest,cli.WaterCompareTest,cli.Et0CommandTest" ;;
    season) echo "$1.*,cli.StagesCommandTest,cli.SumCommandsTest,cli.WeatherCommandTest,cli.SeenStageMovesTasksTest" ;;
    planner) echo "care.PlannerTest,care.PlannedYearTest,care.PlacementTest,care.JudgeTest,care.FinishedTest,care.ConditionTest,care.TitlesTest,care.TogetherTest,care.RuleSituationsTest,care.RuleWindowsTest,care.KeepApartTest,care.KeepApartLawTest,care.WinterWorkTest,care.DemoGardensTest" ;;
    *) echo "$1.*" ;;
  esac
}

planner="Anchor Begun Concerned Condition Earlier Finished Judge KeepApart Placement Planner Task TaskMaker Titles Together Window"
classes_of() {
  case $1 in
    planner) for class in $planner; do echo "care.$class,care.$class\$*"; done | paste -sd, ;;
    *) echo "$1.*" ;;
  esac
}

mvn -q -Dquick test-compile
for package in "$@"; do
  tests=org.oldwood.$(tests_of "$package" | sed 's/,/,org.oldwood./g')
  classes=org.oldwood.$(classes_of "$package" | sed 's/,/,org.oldwood./g')
  mvn -q -Dquick -Pmutation -Dmutation.classes="$classes" -Dmutation.tests="$tests" org.pitest:pitest-maven:mutationCoverage \
    >target/mutation-"$package".log 2>&1 || {
    tail -5 target/mutation-"$package".log >&2
    exit 1
  }
  awk -F, -v name="$package" '{ all++; if ($6 == "KILLED" || $6 == "TIMED_OUT" || $6 == "MEMORY_ERROR") seen++; if ($6 == "NO_COVERAGE") bare++ }
    END { printf "%s: %d faults, %d noticed (%.0f %%), %d in code that none of these tests runs\n", name, all, seen, 100 * seen / all, bare }' \
    target/pit-reports/mutations.csv
  cp target/pit-reports/mutations.csv target/mutation-"$package".csv
done
