#!/usr/bin/env bash
# Makes docs/pictures/quote.png anew, the first page of a demo job's quote as an office program prints it, and growth.svg, the chart
# of growth.csv. The first needs soffice and pdftoppm.
# usage: src/build/pictures.sh [QUOTE.xlsx]   else the finished sample in workbooks
set -euo pipefail
home=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
awk -f "$home/src/build/growth-chart.awk" "$home/docs/pictures/growth.csv" >"$home/docs/pictures/growth.svg"
quote=${1:-$home/workbooks/quince-hollow/quote.xlsx}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
soffice --headless -env:UserInstallation="file://$work/profile" --convert-to pdf --outdir "$work" "$quote" >/dev/null
pdftoppm -r 100 -f 1 -l 1 -scale-to-x 850 -scale-to-y -1 -png -singlefile "$work/$(basename "$quote" .xlsx).pdf" "$home/docs/pictures/quote"
