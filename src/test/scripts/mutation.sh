#!/usr/bin/env bash
# Puts faults into the compiled classes of one package and looks whether its own tests notice (PIT).
# usage: mutation.sh PACKAGE...     pruning, cuttings, feeding, mulching, water, season, care
# Prints, for each package, how many of the faults were noticed; the report is in target/pit-reports.
set -euo pipefail
cd "$(dirname "$0")/../../.."
mvn -q -Dquick test-compile
for package in "$@"; do
  mvn -q -Dquick -Pmutation -Dmutated="$package" org.pitest:pitest-maven:mutationCoverage >target/mutation-"$package".log 2>&1 || {
    tail -5 target/mutation-"$package".log >&2
    exit 1
  }
  awk -F, -v name="$package" '{ all++; if ($6 == "KILLED" || $6 == "TIMED_OUT" || $6 == "MEMORY_ERROR") seen++; if ($6 == "NO_COVERAGE") bare++ }
    END { printf "%s: %d faults, %d noticed (%.0f %%), %d in code that no test of the package runs\n", name, all, seen, 100 * seen / all, bare }' \
    target/pit-reports/mutations.csv
  cp target/pit-reports/mutations.csv target/mutation-"$package".csv
done
