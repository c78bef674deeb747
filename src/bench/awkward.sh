#!/bin/bash
# Starts the whole program on awkward files, disks and terminals. Every run must end in words within a minute,
# without a trace, with an exit code that the program knows, and leave old files whole.
# usage: src/bench/awkward.sh    after `mvn package`. PROGRAM may name another way to start the program; the
# parts with full and read-only disks need root, for they mount a small one.
set -u
cd "$(dirname "$0")/../.."
program=$(realpath "${PROGRAM:-target/underhold/bin/underhold}")
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

# ---- disks
if [ "$(id -u)" = 0 ] && mkdir "$disk" && mount -t tmpfs -o size=1m none "$disk"; then
  "$program" advise "$demo" --save a.advice.json >/dev/null 2>&1
  cp "$demo" "$disk/s.site.json"
  cp a.advice.json "$disk/a.advice.json"
  "$program" review start "$disk/a.advice.json" --by Ines >/dev/null 2>&1
  "$program" class start "$disk/c.class.json" "$cases" --students A >/dev/null 2>&1
  "$program" report "$demo" --out "$disk/r.html" >/dev/null 2>&1 || head -c 100 "$disk/r.html"
  for file in s.site.json a.review.json c.class.json; do cp "$disk/$file" "$file"; cp "$disk/$file" "$disk/$file.was"; done
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
    for ending in html pdf md json; do
      ends "report $ending, $2" "$1" "$2" report "$demo" --out "$disk/n.$ending"; [ -e "$disk/n.$ending" ] && wrong "half a report"
    done
  }
  cp -r "$cases" "$disk/cases" 2>/dev/null
  cat /dev/zero >"$disk/filler" 2>/dev/null
  writers 1 'No space left'
  hidden=$(find "$disk" -name '.*' -type f | wc -l); [ "$hidden" = 0 ] || wrong "$hidden temporary files after a full disk"
  rm "$disk/filler"; mount -o remount,ro "$disk"
  writers 1 'Read-only|read-only|may be written|no permission'
  mount -o remount,rw "$disk"
fi
echo "$runs runs and looks, $failures wrong"
[ $failures = 0 ]
