#!/bin/sh
# The calculators tried for long: inputs of every page changed by chance, and what POI's evaluator and LibreOffice (soffice) make of
# them held against Java. The gate does the same with 6 trials a page and 2 workbooks.
# Usage: src/build/calculator-trials.sh [TRIALS_A_PAGE [WORKBOOKS]]; else 100 and 30, some ten minutes.
set -eu
cd "$(dirname "$0")/../.."
nice -n 10 mvn -q -B test -Dspotless.check.skip=true -Dtest=CalculatorsFollowTest -DcalculatorTrials="${1:-100}"
nice -n 10 mvn -q -B -Plibreoffice -DskipUnitTests=true -Dspotless.check.skip=true verify \
  -Dit.test=CalculatorsLibreOfficeCheck -DcalculatorBooks="${2:-30}"
echo "every page said what Java says"
