#!/usr/bin/env bash
# Puts faults into the compiled classes of one room and looks whether the tests notice (PIT).
# usage: mutation.sh ROOM...     a craft (pruning, cuttings, feeding, mulching, water) or a package (season, plan, plan.settle, ...)
# Asked are the room's own tests; for a craft also those of what it tells the rules, and of its commands.
# Prints, for each room, how many of the faults were noticed; the report is in target/pit-reports.
set -euo pipefail
cd "$(dirname "$0")/../../.."

tests_of() {
  case $1 in
    pruning | cuttings | water) echo "craft.$1.*,facts.$1.*,cli.$1.*" ;;
    feeding | mulching) echo "craft.$1.*,facts.$1.*,facts.KeepApart*,cli.feeding.*,plan.Feed*" ;;
    season) echo "season.*,cli.season.*" ;;
    plan | plan.*) echo "plan.*,facts.KeepApart*" ;;
    *) echo "$1.*" ;;
  esac
}

classes_of() {
  case $1 in
    pruning | cuttings | feeding | mulching | water) echo "craft.$1.*" ;;
    *) echo "$1.*" ;;
  esac
}

mvn -q -Dquick test-compile
for room in "$@"; do
  tests=org.oldwood.$(tests_of "$room" | sed 's/,/,org.oldwood./g')
  classes=org.oldwood.$(classes_of "$room")
  mvn -q -Dquick -Pmutation -Dmutation.classes="$classes" -Dmutation.tests="$tests" org.pitest:pitest-maven:mutationCoverage \
    >target/mutation-"$room".log 2>&1 || {
    tail -5 target/mutation-"$room".log >&2
    exit 1
  }
  awk -F, -v name="$room" '{ all++; if ($6 == "KILLED" || $6 == "TIMED_OUT" || $6 == "MEMORY_ERROR") seen++; if ($6 == "NO_COVERAGE") bare++ }
    END { printf "%s: %d faults, %d noticed (%.0f %%), %d in code that none of these tests runs\n", name, all, seen, 100 * seen / all, bare }' \
    target/pit-reports/mutations.csv
  cp target/pit-reports/mutations.csv target/mutation-"$room".csv
done
