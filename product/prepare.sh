# Sourced by product/run and product/test from the project's root: gets what a fresh machine lacks, and builds.

# on standard error: what the program itself prints must stay clean
say() { echo "== $*" >&2; }
fail() { echo "wickbench: $*" >&2; exit 2; }

# have_jdk: a Java compiler of 17 or newer; sets JAVA_HOME to it
have_jdk() {
  for javac in "${JAVA_HOME:-/none}/bin/javac" "$(command -v javac || true)" /usr/lib/jvm/java-17-openjdk-*/bin/javac; do
    [ -x "$javac" ] || continue
    [ "$("$javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')" -ge 17 ] || continue
    JAVA_HOME=$(dirname "$(dirname "$(readlink -f "$javac")")")
    export JAVA_HOME
    return
  done
  return 1
}
have_command() { command -v "$1" >/dev/null 2>&1; }
have_library() { /sbin/ldconfig -p 2>/dev/null | grep -q "$1"; }
have_font() { have_command fc-list && [ -n "$(fc-list | head -n 1)" ]; }

# prepare [windows] [tests] [statistics]: installs what is missing for these, or says in one line what that is
prepare() {
  missing=
  have_jdk || missing="$missing openjdk-17-jdk-headless"
  have_command mvn || missing="$missing maven"
  have_font || missing="$missing fontconfig fonts-dejavu-core"
  for purpose in "$@"; do
    case $purpose in
      windows) have_library libgtk-3.so.0 || missing="$missing libgtk-3-0" ;;
      tests)
        have_command Xvfb && have_command xauth || missing="$missing xvfb xauth"
        # other programs read back what was printed
        have_command pdftotext || missing="$missing poppler-utils"
        have_command soffice || missing="$missing libreoffice-calc-nogui"
        have_command python3 || missing="$missing python3"
        have_command openssl || missing="$missing openssl"
        ;;
      statistics) have_command Rscript || missing="$missing r-base-core" ;;
    esac
  done
  [ -z "$missing" ] || install $missing
  have_jdk || fail "needs a JDK of version 17 or newer"
}

install() {
  as_root=
  patient="-o DPkg::Lock::Timeout=300" # seconds, when another installation is under way
  [ "$(id -u)" = 0 ] || as_root="sudo -n"
  have_command apt-get && $as_root true 2>/dev/null || fail "please install: $*"
  say "installing $*"
  mkdir -p product/target
  { $as_root apt-get $patient update -qq && $as_root env DEBIAN_FRONTEND=noninteractive apt-get $patient install -y -qq --no-install-recommends "$@"; } \
    >product/target/apt.log 2>&1 || fail "apt could not install $* ($(grep '^E:' product/target/apt.log | head -n 1))"
}

# maven ARGUMENTS: names each module as it is built; the whole log is kept; answers as Maven did
maven() {
  mkdir -p product/target
  log=product/target/build.log
  { mvn -B -ntp -Dstyle.color=never "$@" 2>&1 && printf "\n[BUILT]\n"; } | tee "$log" | sed -un 's/^\[INFO\] Building \(.* \[[0-9]*\/[0-9]*\]\)$/   \1/p' >&2
  grep -q '^\[BUILT\]$' "$log" || { complaints; return 1; }
}

# complaints: the first that the last build made
complaints() { grep '^\[ERROR\]' product/target/build.log | head -n 40 >&2; }
