#!/usr/bin/env bash
# Builds Moultwright and opens it on the demo brood room.
# Without a display it opens the same workbench on a virtual one and leaves pictures under target/first-look/.
set -euo pipefail
cd "$(dirname "$0")/.."

on_debian() { command -v apt-get >/dev/null 2>&1; }

have_gtk() { ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0'; }

# Installs Debian packages as root, or through sudo after asking. Says what to do where it may not.
install_packages() {
  local why=$1
  shift
  echo "$why: $*"
  if [ "$(id -u)" -eq 0 ]; then
    apt-get update -qq && apt-get install -y -qq --no-install-recommends "$@" >/dev/null
  elif command -v sudo >/dev/null 2>&1 && [ -t 0 ]; then
    read -r -p "Install with sudo now? [y/N] " answer
    case $answer in
      [yY]*) sudo apt-get update -qq && sudo apt-get install -y -qq --no-install-recommends "$@" ;;
      *) return 1 ;;
    esac
  else
    return 1
  fi
}

need() {
  install_packages "$@" || {
    shift
    echo "Not installed. Ask an administrator for: apt-get install $*" >&2
    exit 1
  }
}

have_jdk() { command -v javac >/dev/null 2>&1 || [ -x "${JAVA_HOME:-}/bin/javac" ]; }

if ! have_jdk || ! command -v mvn >/dev/null 2>&1; then
  echo "The build needs a JDK 17 or later and Maven. Install both and run this again." >&2
  exit 1
fi

if [ "$(uname -s)" = Linux ] && on_debian && ! have_gtk; then
  need "The window needs GTK 3, which is missing here" libgtk-3-0
fi

echo "Building; the first time takes some minutes ..."
mvn -q -B package -DskipTests
program=target/moultwright/bin/moultwright

if [ -n "${DISPLAY:-}" ] || [ -n "${WAYLAND_DISPLAY:-}" ] || [ "$(uname -s)" != Linux ]; then
  exec "$program" --demo
fi

if ! command -v Xvfb >/dev/null 2>&1; then
  if on_debian; then
    need "There is no display here; a virtual one is missing" xvfb
  else
    echo "There is no display here and no Xvfb to stand in for one. Install Xvfb and run this again." >&2
    exit 1
  fi
fi

looks=target/first-look
rm -rf "$looks"
mkdir -p "$looks"
exec 3<>"$looks/.display"
Xvfb -displayfd 3 -screen 0 1280x800x24 -nolisten tcp >/dev/null 2>&1 &
virtual=$!
trap 'kill "$virtual" 2>/dev/null || true; rm -f "$looks/.display"' EXIT
for _ in $(seq 100); do
  [ -s "$looks/.display" ] && break
  sleep 0.1
done
DISPLAY=":$(tr -d '[:space:]' <"$looks/.display")"
export DISPLAY
echo "No display: opening the workbench on a virtual one ($DISPLAY)."
"$program" --first-look "$looks"
# The evening shown has no pots yet: the labels come from the whole story.
"$program" import demo-data/cc-26-* --store "$looks/whole-story.store"
"$program" labels --store "$looks/whole-story.store" --brood CC-26-A --sheet a4-3x8-70x37 --to "$looks/labels.pdf"
# What the keeper knew on the evening of the pictures.
"$program" forecast demo-data/cc-26-* --as-of 2026-05-03T19:41:00Z
echo "Pictures and labels are in $looks."
