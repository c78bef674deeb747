#!/bin/bash
# Starts the whole program on awkward files, disks and terminals. Every run must end in words within a minute,
# without a trace, with an exit code that the program knows, and leave old files whole.
# usage: src/bench/awkward.sh    after `mvn package`. PROGRAM may name another way to start the program; the
# parts with full and read-only disks need root, for they mount a small one.
set -u
cd "$(dirname "$0")/../.."
program=$(realpath "${PROGRAM:-target/underhold/bin/underhold}")
table=$PWD/cases/demo/riverside-estate.zones.csv
demo=$PWD/cases/demo/ferry-street-column.site.json
cases=$PWD/cases/classroom/first
work=$(mktemp -d)
disk=$work/disk
failures=0 runs=0
trap 'mountpoint -q "$disk" && umount "$disk"; rm -rf "$work"' EXIT
cd "$work"

wrong() { failures=$((failures + 1)); echo "WRONG: $1" | cut -c1-300; head -c 600 err | cat -v; }

# ends NAME CODES PATTERN WORDS...: runs the program with the words; its messages must hold the pattern
ends() {
  local name=$1 codes=$2 pattern=$3; shift 3
  runs=$((runs + 1))
  timeout -k 5 120 "$program" "$@" <"${IN:-/dev/null}" >out 2>err
  local code=$?
  case ",$codes," in *",$code,"*) ;; *) wrong "$name: exit code $code" ;; esac
  if grep -qE 'Exception|^\s+at [a-z.]+[A-Z]|fault of the program' err; then wrong "$name: shows its insides"; fi
  if LC_ALL=C grep -qP '[\x00-\x08\x0b-\x1f\x7f]' err; then wrong "$name: control characters"; fi
  if ! cat out err | grep -qE "$pattern"; then wrong "$name: does not say $pattern"; fi
}

# same FILE: is as it was
same() { runs=$((runs + 1)); cmp -s "$1" "$1.was" || wrong "$1 is not as it was"; }

# ---- files that are none
head -c 100000000 /dev/urandom >large.site.json
mkdir folder.site.json
mkfifo pipe.site.json pipe.html
ln -s two.site.json one.site.json; ln -s one.site.json two.site.json
ln -s /dev/zero zero.site.json; ln -s /dev/zero zero.html
: >empty.site.json
cp "$demo" $'new\nline\e[31m.site.json'
for command in advise "site check" interview; do
  ends "$command: 100 MB" 1 'larger than 8 MiB' $command large.site.json
  ends "$command: folder" 1 'directory' $command folder.site.json
  ends "$command: pipe nobody writes to" 1 'device or pipe' $command pipe.site.json
  ends "$command: /dev/zero" 1 'device or pipe' $command /dev/zero
  ends "$command: /dev/null" 1 'device or pipe' $command /dev/null
done
ends "link to itself" 1 'link' advise one.site.json
ends "link to /dev/zero" 1 'device or pipe' advise zero.site.json
ends "empty" 1 'empty' advise empty.site.json
ends "name with a line end and an escape" 0,1 'Ferry' advise $'new\nline\e[31m.site.json'
ends "no such name" 1 'no file' advise $'nothing\e[2J.site.json'
for kind in recheck "review show" "class show"; do
  ends "$kind: 100 MB" 1 'larger' $kind large.site.json
  ends "$kind: pipe" 1 'device or pipe' $kind pipe.site.json
done
ln large.site.json large.case.json; ln -s pipe.site.json pipe.case.json
ends "class key: 100 MB" 1 'larger' class key large.case.json
ends "class key: pipe" 1 'device or pipe' class key pipe.case.json

# ---- tables of zones
cp "$table" zones.csv
head -c 100000000 /dev/urandom >large.csv
{ head -1 zones.csv; yes x,y | head -c 1000000; } >many.csv
{ head -1 zones.csv; head -c 100000000 /dev/zero | tr '\0' ,; } >wide.csv
{ head -1 zones.csv; printf '"'; head -c 100000000 /dev/zero | tr '\0' x; } >open.csv
{ head -1 zones.csv | tr -d '\r\n'; head -c 1000000 /dev/zero | tr '\0' ,; } >head.csv
mkdir folder.csv none; mkfifo pipe.csv; ln -s /dev/zero zero.csv; : >none.csv
printf '\xff\xfez\0o\0n\0e\0' >other.csv
tables() { ends "screen: $1" 1 "$3" screen $2 --out t.csv --draws 0; [ -e t.csv ] && wrong "screen: $1: a table"; rm -f t.csv t.part.csv; }
tables "100 MB of noise" large.csv 'UTF-8'
tables "a header of a million columns" head.csv 'columns|characters'
tables "a folder of that name" folder.csv 'holds no file'
tables "an empty folder" none 'holds no file'
tables "a pipe nobody writes to" pipe.csv 'device or pipe'
tables "/dev/zero behind a link" zero.csv 'device or pipe'
tables "an empty file" none.csv 'empty'
tables "UTF-16" other.csv 'UTF-8'
tables "no such file" absent.csv 'no file'
ends "screen: a row of 100 MB" 1 'has no end' screen wide.csv --out u.csv --draws 0
ends "screen: a quotation mark left open over 100 MB" 1 'has no end' screen open.csv --out u.csv --draws 0
ends "screen: a quarter of a million bad rows" 1 'skipped' screen many.csv --out u.csv --draws 0; rm -f u.csv
ends "screen over a pipe" 1 'no ordinary file|device or pipe|no table' screen zones.csv --out pipe.csv --draws 0
ends "screen over /dev/zero" 1 'no ordinary file|device or pipe|no table' screen zones.csv --out zero.csv --draws 0
echo mine >f.part.csv; cp f.part.csv f.part.csv.was
ends "screen over somebody's begun table" 1 'no table under way' screen zones.csv --out f.csv --draws 0; same f.part.csv
ends "screen anew over somebody's begun table" 1 'no table under way' screen zones.csv --out f.csv --draws 0 --anew; same f.part.csv
mkfifo g.part.csv; ln -s /dev/zero h.part.csv
ends "screen with a pipe as begun table" 1 '.' screen zones.csv --out g.csv --draws 0
ends "screen with a link as begun table" 1 '.' screen zones.csv --out h.csv --draws 0
rm -f large.csv many.csv wide.csv open.csv
ends "report over a pipe" 1 'device or pipe' report "$demo" --out pipe.html
ends "report over /dev/zero" 1 'device or pipe' report "$demo" --out zero.html
ends "rules of a file" 1 'folder' advise "$demo" --rules empty.site.json
ends "rules of a folder of pipes" 1 'pack' advise "$demo" --rules folder.site.json

# ---- words
long=$(head -c 10000 /dev/zero | tr '\0' x)
ends "10,000 signs as a command" 2 'no command' "$long"
ends "10,000 signs as a file" 1,2 '.' advise "$long"
ends "10,000 signs as a fact" 1,2 '.' site set "$long=1" --site "$demo"
ends "10,000 signs as an option" 2 'no option' advise "--$long"
ends "bytes that are no text" 1,2 '.' advise $'\xff\xfe'
ends "escape as a command" 2 'no command' $'\e]0;x\a'

# ---- ends and terminals
runs=$((runs + 1)); "$program" advise "$demo" 2>err | head -1 >out
grep -qE 'Exception|^\s+at [a-z.]+[A-Z]|fault' err && wrong "output closed: shows its insides"
runs=$((runs + 1)); "$program" interview new.site.json <&- >out 2>err; [ $? -le 1 ] || wrong "input closed"
grep -qE 'Exception|fault of' err && wrong "input closed: shows its insides"
runs=$((runs + 1)); "$program" advise "$demo" >/dev/full 2>err; [ $? -eq 1 ] || wrong "full disk behind >: exit code"
grep -q 'not written whole' err || wrong "full disk behind >: not said"
runs=$((runs + 1)); "$program" advise "$demo" >&- 2>err; grep -qE 'Exception|fault of' err && wrong "no output at all"
LANG=C LC_ALL=C ends "LANG=C" 0 'Ferry' advise "$demo"
LC_ALL=C grep -qP '[\x80-\xff]' out && wrong "LANG=C: other signs than ASCII"
TERM=dumb COLUMNS=20 ends "TERM=dumb, 20 columns" 0 'Ferry' advise "$demo"
for terminal in dumb xterm nonsense; do
  runs=$((runs + 1))
  TERM=$terminal timeout 120 script -qec "stty cols 20; $program advise $demo" /dev/null </dev/null >out 2>err
  grep -qE 'Exception|^\s+at [a-z.]+[A-Z]|fault of' out && wrong "terminal $terminal of 20 columns"
done

# ---- the interactive shell, whose file of earlier lines is damaged
export XDG_STATE_HOME=$work/state
mkdir -p state/underhold
shell() { # NAME PATTERN
  runs=$((runs + 1))
  { sleep 5; printf 'version\r'; sleep 2; printf 'exit\r'; sleep 1; } | TERM=xterm timeout -k 5 60 script -qefc "$program" /dev/null >out 2>err
  cp out err
  grep -qE 'Exception|^\s+at [a-z.]+[A-Z]' out && wrong "shell, $1: shows its insides"
  grep -q "$2" out || wrong "shell, $1: does not say $2"
  grep -q 'rule pack' out || wrong "shell, $1: does not work"
}
shell "no history yet" 'rule pack'
head -c 5000 /dev/urandom >state/underhold/history; shell "history of noise" 'no UTF-8 text'
rm state/underhold/history; mkdir state/underhold/history; shell "history is a folder" 'no ordinary file'
rmdir state/underhold/history; mkfifo state/underhold/history; shell "history is a pipe" 'no ordinary file'
rm -r state; echo >state; shell "no folder for it" 'rule pack'; rm state

# ---- two programs on one file
"$program" screen zones.csv --out one.csv --draws 1000 >/dev/null 2>first.err &
first=$!
for wait in $(seq 200); do [ -s one.part.csv ] && break; sleep 0.1; done
ends "a second screening into one table" 1 'being written by another run' screen zones.csv --out one.csv --draws 1000
wait $first || wrong "the first screening was disturbed"
cp "$demo" both.site.json
mkfifo answers
"$program" interview both.site.json <answers >out 2>first.err &
first=$!
exec 9>answers
for wait in $(seq 200); do grep -q '^Question' first.err && break; sleep 0.1; done
"$program" site set movementLimit="7 mm" --site both.site.json >/dev/null 2>&1 || wrong "the second program was refused"
cp both.site.json both.site.json.was
printf 'unknown\n1\n' >&9; exec 9>&-
wait $first; code=$?; runs=$((runs + 1))
[ $code -le 1 ] || wrong "an interview whose file another program changed: exit code $code"
grep -q 'changed since it was read' first.err || { cp first.err err; wrong "an interview whose file another program changed is not told"; }
same both.site.json
for i in 1 2 3 4 5 6; do "$program" site new race.site.json --name "R$i" >/dev/null 2>race.$i.err; echo $? >race.$i.code & done
wait
runs=$((runs + 1)); [ "$(cat race.*.code | grep -c 0)" = 1 ] || wrong "of six programs that make one file not one alone succeeded"
[ "$(grep -l 'already' race.*.err | wc -l)" = 5 ] || wrong "five of six were not told"

# ---- disks
if [ "$(id -u)" = 0 ] && mkdir "$disk" && mount -t tmpfs -o size=1m none "$disk"; then
  "$program" advise "$demo" --save a.advice.json >/dev/null 2>&1
  cp "$demo" "$disk/s.site.json"
  cp a.advice.json "$disk/a.advice.json"
  "$program" review start "$disk/a.advice.json" --by Ines >/dev/null 2>&1
  "$program" class start "$disk/c.class.json" "$cases" --students A >/dev/null 2>&1
  "$program" report "$demo" --out "$disk/r.html" >/dev/null 2>&1 || head -c 100 "$disk/r.html"
  "$program" screen zones.csv --out "$disk/v.csv" --draws 0 >/dev/null 2>&1
  for file in s.site.json a.review.json c.class.json v.csv; do cp "$disk/$file" "$file"; cp "$disk/$file" "$disk/$file.was"; done
  writers() { # CODE PATTERN
    ends "site set, $2" "$1" "$2" site set excavationDepth="4 m" --site "$disk/s.site.json"; same "$disk/s.site.json"
    printf 'unknown\nunknown\n1\n1\n' >typed
    IN=typed ends "interview, $2" "$1" "$2" interview "$disk/s.site.json"; same "$disk/s.site.json"
    printf 'Yard\nwall\n' >typed
    IN=typed ends "new interview, $2" "$1" "$2" interview "$disk/n.site.json"; [ -e "$disk/n.site.json" ] && wrong "half a site"
    ends "site new, $2" "$1" "$2" site new "$disk/n.site.json" --name X; [ -e "$disk/n.site.json" ] && wrong "half a site"
    ends "advise --save, $2" "$1" "$2" advise "$demo" --save "$disk/b.advice.json"; [ -e "$disk/b.advice.json" ] && wrong "half a consultation"
    ends "review comment, $2" "$1" "$2" review comment "$disk/a.review.json" word --by Ines; same "$disk/a.review.json"
    ends "class reveal, $2" "$1" "$2" class reveal "$disk/c.class.json" --case larch-terrace; same "$disk/c.class.json"
    ends "class start, $2" "$1" "$2" class start "$disk/d.class.json" "$cases" --students A; [ -e "$disk/d.class.json" ] && wrong "half a class"
    ends "class ask, $2" "$1" "$2" class ask "$disk/c.class.json" footingWidth --case larch-terrace --by A; same "$disk/c.class.json"
    ends "class make, $2" "$1" "$2" class make --leader needles --teaches spanning --out "$disk/m.case.json"; [ -e "$disk/m.case.json" ] && wrong "half a case"
    ends "class key, $2" "$1" "$2" class key "$cases/larch-terrace.case.json" --out "$disk/k.html"; [ -e "$disk/k.html" ] && wrong "half a key"
    ends "screen, $2" "$1" "$2" screen zones.csv --out "$disk/t.csv" --draws 0; [ -e "$disk/t.csv" ] && wrong "half a table"
    ends "screen over a table, $2" "$1" "$2" screen zones.csv --out "$disk/v.csv" --draws 0; same "$disk/v.csv"
    for ending in html pdf md json; do
      ends "report $ending, $2" "$1" "$2" report "$demo" --out "$disk/n.$ending"; [ -e "$disk/n.$ending" ] && wrong "half a report"
    done
  }
  cp -r "$cases" "$disk/cases" 2>/dev/null
  cat /dev/zero >"$disk/filler" 2>/dev/null
  writers 1 'No space left'
  hidden=$(find "$disk" -name '.*' -type f | wc -l); [ "$hidden" = 0 ] || wrong "$hidden temporary files after a full disk"
  rm "$disk/filler"
  ends "screen gone on with when there is room" 0 'is written' screen zones.csv --out "$disk/t.csv" --draws 0
  "$program" screen zones.csv --out whole.csv --draws 0 >/dev/null 2>&1; cmp -s whole.csv "$disk/t.csv" || wrong "another table after a full disk"
  rm -f "$disk"/t.* "$disk"/v.part.*
  mount -o remount,ro "$disk"
  writers 1 'Read-only|read-only|may be written|no permission'
  mount -o remount,rw "$disk"
fi
echo "$runs runs and looks, $failures wrong"
[ $failures = 0 ]
