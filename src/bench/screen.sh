#!/bin/sh
# What it costs to screen many zones: tables of ROWS rows (1000 3000 10000 unless told), the demo table again and
# again with other amounts and cells emptied, screened by the launcher with a heap of 512 MB. Prints seconds,
# time a row, peak memory, and how the time grows against the rows. Build first: mvn package.
# Usage: src/bench/screen.sh [ROWS...]

cd "$(dirname -- "$0")/../.." || exit 1
[ $# -gt 0 ] || set -- 1000 3000 10000
lib=target/underhold/lib
[ -r $lib/underhold.jar ] || { echo "There is no $lib/underhold.jar: build first, mvn package." >&2; exit 1; }
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
javac -nowarn -d "$work" -cp "$lib/libraries/*" src/bench/ZoneRows.java || exit 1

echo "$(date +%F), $(nproc) processors, load $(cut -d' ' -f1-3 /proc/loadavg)"
for rows; do
  java -cp "$work:$lib/libraries/*" bench.ZoneRows cases/demo/riverside-estate.zones.csv "$rows" 7 "$work/$rows.csv" || exit 1
  JAVA_TOOL_OPTIONS=-Xmx512m /usr/bin/time -q -o "$work/time" -f '%e %U %S %M' \
    target/underhold/bin/underhold screen "$work/$rows.csv" --out "$work/table$rows.csv" >"$work/said" 2>&1
  read -r wall user system memory <"$work/time"
  told=$(grep -c . "$work/table$rows.csv")
  echo "$rows $wall $user $system $memory $told"
done | awk '
  BEGIN { printf "%8s %8s %10s %9s %8s %8s  %s\n", "rows", "wall s", "processor", "ms a row", "peak MB", "written", "growth" }
  {
    printf "%8d %8.1f %10.1f %9.2f %8.0f %8d", $1, $2, $3 + $4, 1000 * $2 / $1, $5 / 1024, $6 - 1
    if (before) printf "  %.1f times the rows, %.1f times the time", $1 / before, $2 / wall
    printf "\n"
    before = $1; wall = $2
  }'
