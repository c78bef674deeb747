#!/bin/sh
# Whole-process times of the commands, side by side with the least program on Spring Shell: medians of RUNS
# rounds (10 unless told), each program once a round. Wall and processor seconds, peak memory, and the ratio of
# the wall and processor times to the bare program's. Build first: mvn package. Usage: src/bench/commands.sh [RUNS]

runs=${1:-10}
cd "$(dirname -- "$0")/../.." || exit 1
lib=target/underhold/lib
[ -r $lib/underhold.jar ] || { echo "There is no $lib/underhold.jar: build first, mvn package." >&2; exit 1; }
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT

# The bare program has the libraries of the shell alone.
shell=$(ls $lib/libraries/*.jar |
  grep -E '/(spring|jline|jspecify|commons-logging|micrometer|slf4j|logback|log4j|jakarta|snakeyaml|antlr|ST4|hibernate|jboss|classmate)' |
  tr '\n' ':')
javac -nowarn -d "$work" -cp "$shell" src/bench/BareShell.java || exit 1

one=cases/demo/alder-row-party-wall.site.json
three=cases/demo/three-bridges-interchange.site.json
underhold=target/underhold/bin/underhold
jar="java -jar target/underhold.jar"
cat >"$work/programs" <<END
bare Spring Shell, plainly|java -Dspring.shell.interactive.enabled=false -Dspring.main.banner-mode=off -Dlogging.level.root=OFF -cp $work:$shell bare.BareShell hello
advise, one zone, plain jar|$jar advise $one
advise, one zone, launcher|$underhold advise $one
advise, three zones, plain jar|$jar advise $three
advise, three zones|$underhold advise $three
ask-next, three zones|$underhold ask-next $three
what-if, three zones|$underhold what-if bearingDepth=20m --site $three
turning-points, three zones|$underhold turning-points $three
compare, three zones|$underhold compare drilled-piles pits $three
firmness, three zones|$underhold firmness $three
why-not pits, three zones|$underhold why-not pits $three
why-not needles, three zones|$underhold why-not needles $three
report in HTML, one zone|$underhold report $one --out $work/report.html
report in HTML, three zones|$underhold report $three --out $work/report.html
report in PDF, one zone|$underhold report $one --out $work/report.pdf
report in PDF, three zones|$underhold report $three --out $work/report.pdf
version|$underhold version
END

round=0
while [ $round -lt "$runs" ]; do
  round=$((round + 1))
  while IFS='|' read -r name command; do
    rm -f "$work"/report.*
    # shellcheck disable=SC2086 # the words of a command
    /usr/bin/time -q -o "$work/time" -f '%e %U %S %M' $command >"$work/out" 2>&1
    [ -s "$work/out" ] || { echo "$name printed nothing" >&2; exit 1; }
    read -r wall user system memory <"$work/time"
    echo "$name|$wall|$user $system|$memory" >>"$work/times"
  done <"$work/programs"
done

echo "medians of $runs rounds on $(nproc) processors; load before and after: see uptime"
awk -F'|' '
  function median(key, field,   values, n, i, j, t) {
    n = split(list[key, field], values, " ")
    for (i = 2; i <= n; i++)
      for (j = i; j > 1 && values[j - 1] + 0 > values[j] + 0; j--) { t = values[j]; values[j] = values[j - 1]; values[j - 1] = t }
    return n % 2 ? values[(n + 1) / 2] : (values[n / 2] + values[n / 2 + 1]) / 2
  }
  {
    if (!seen[$1]++) order[++count] = $1
    split($3, spent, " ")
    list[$1, "wall"] = list[$1, "wall"] " " $2
    list[$1, "processor"] = list[$1, "processor"] " " (spent[1] + spent[2])
    list[$1, "memory"] = list[$1, "memory"] " " $4
  }
  END {
    printf "%-32s %7s %6s %10s %6s %8s\n", "", "wall s", "ratio", "processor", "ratio", "peak MB"
    wall = median(order[1], "wall"); processor = median(order[1], "processor")
    for (i = 1; i <= count; i++) {
      w = median(order[i], "wall"); p = median(order[i], "processor")
      printf "%-32s %7.2f %6.2f %10.2f %6.2f %8.0f\n", order[i], w, w / wall, p, p / processor, median(order[i], "memory") / 1024
    }
  }' "$work/times"
