# What the two commands need on a Debian machine, installed when missing. Read by ./afterlength and ./verify; everything is said
# on standard error, because standard output belongs to the answer of a verb.

say() { printf '%s\n' "$*" >&2; }

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"; elif command -v sudo >/dev/null 2>&1; then sudo "$@"; else
    say "This needs the rights of the administrator, and there is no sudo. As root run: $*"
    return 1
  fi
}

# install WHY PACKAGE...
install() {
  local why=$1
  shift
  command -v apt-get >/dev/null 2>&1 || { say "Missing: $why. Install it with your system's package manager (Debian calls it: $*)."; exit 3; }
  say "Installing $why ($*) …"
  if [ -z "${package_lists_read:-}" ]; then
    as_root apt-get -o DPkg::Lock::Timeout=300 update -qq >&2 || exit 3
    package_lists_read=yes
  fi
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300 install -y -qq --no-install-recommends "$@" >&2 || exit 3
}

# The feature release of a java command: 17 for 17.0.15.
java_release() { "$1" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1; }

good_jdk() { [ -x "$1/bin/javac" ] && [ "$(java_release "$1/bin/java")" -ge 17 ] 2>/dev/null; }

# Sets JAVA_HOME to a JDK of release 17 or newer.
need_jdk() {
  if [ -n "${JAVA_HOME:-}" ] && good_jdk "$JAVA_HOME"; then return; fi
  local found
  for found in "$(dirname "$(dirname "$(readlink -f "$(command -v javac 2>/dev/null || echo /none/bin/javac)")")")" /usr/lib/jvm/*17*; do
    if good_jdk "$found"; then export JAVA_HOME=$found; return; fi
  done
  # On a minimal system the manual folder is missing and the package's set-up stumbles over it.
  [ -d /usr/share/man/man1 ] || as_root mkdir -p /usr/share/man/man1
  install "a Java development kit, release 17" openjdk-17-jdk-headless
  for found in /usr/lib/jvm/java-17-openjdk-*; do
    if good_jdk "$found"; then export JAVA_HOME=$found; return; fi
  done
  say "No Java development kit of release 17 or newer was found even after installing one. Set JAVA_HOME to yours."
  exit 3
}

need_maven() { command -v mvn >/dev/null 2>&1 || install "the build tool Maven" maven; }

# The browser tests look for it at these places too.
need_chromium() {
  local name
  for name in chromium chromium-browser google-chrome; do command -v "$name" >/dev/null 2>&1 && return; done
  install "the browser Chromium" chromium
}
