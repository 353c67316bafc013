#!/usr/bin/env bash
# Puts faults into the compiled classes of one package and looks whether the tests notice (PIT).
# usage: mutation.sh PACKAGE...     pruning, cuttings, feeding, mulching, water, season, care
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
    *) echo "$1.*" ;;
  esac
}

mvn -q -Dquick test-compile
for package in "$@"; do
  tests=org.oldwood.$(tests_of "$package" | sed 's/,/,org.oldwood./g')
  mvn -q -Dquick -Pmutation -Dmutated="$package" -Dmutation.tests="$tests" org.pitest:pitest-maven:mutationCoverage \
    >target/mutation-"$package".log 2>&1 || {
    tail -5 target/mutation-"$package".log >&2
    exit 1
  }
  awk -F, -v name="$package" '{ all++; if ($6 == "KILLED" || $6 == "TIMED_OUT" || $6 == "MEMORY_ERROR") seen++; if ($6 == "NO_COVERAGE") bare++ }
    END { printf "%s: %d faults, %d noticed (%.0f %%), %d in code that none of these tests runs\n", name, all, seen, 100 * seen / all, bare }' \
    target/pit-reports/mutations.csv
  cp target/pit-reports/mutations.csv target/mutation-"$package".csv
done
