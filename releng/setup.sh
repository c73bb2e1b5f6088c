# Sourced by the scripts beside it: finds, and where it can installs, what a build needs, and knows the build's state.
# Sets root, state and product; functions for the rest. MAVEN_ARGS are given to every run of Maven.

root=$(cd -P -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
state=$root/releng/target
product=$root/releng/product/target/products/padwright/linux/gtk/x86_64/padwright

java_needed=17
maven_needed=3.9.9
maven_fetched=3.9.16
maven_sum=5af3b743dd8b876b5c45da33b676251e5f1687712644abb4ee519ca56e1d89ce

say() {
	printf 'padwright: %s\n' "$*" >&2
}

fail() {
	say "$*"
	exit 2
}

have() {
	command -v "$1" >/dev/null
}

# What the product is made of, as one line that changes when any of it does.
fingerprint() {
	(
		cd "$root"
		find bundles features releng/product releng/padwright.target releng/log4j.properties pom.xml .mvn \
			-type d \( -name target -o -name bin -o -name src-gen -o -name '*.tests' \) -prune \
			-o -type f ! -name '.polyglot.*' -printf '%p %T@ %s %m\n' | sort | cksum
	)
}

is_built() {
	[[ -f $state/built && $(<"$state/built") == "$1" && -x $product/padwright ]]
}

# One build at a time; released when the script ends.
lock_builds() {
	have flock || fail "please install flock (Debian's util-linux)"
	mkdir -p "$state"
	exec 9>"$state/lock"
	flock 9
}

java_version() {
	"$1/bin/javac" -version 2>/dev/null | sed -n 's/^javac \([0-9]*\).*/\1/p'
}

is_jdk() {
	local version
	version=$(java_version "$1") && [[ -n $version ]] && ((version >= java_needed))
}

# Sets JAVA_HOME to a JDK that is new enough; the oldest such is nearest to what Tycho was made for.
find_jdk() {
	local candidate
	if [[ -n ${JAVA_HOME-} ]] && is_jdk "$JAVA_HOME"; then
		return
	fi
	if have javac; then
		candidate=$(readlink -f "$(command -v javac)")
		JAVA_HOME=${candidate%/bin/javac}
		is_jdk "$JAVA_HOME" && return
	fi
	for candidate in $(ls -dv /usr/lib/jvm/*/ 2>/dev/null); do
		JAVA_HOME=${candidate%/}
		is_jdk "$JAVA_HOME" && return
	done
	unset JAVA_HOME
	return 1
}

version_at_least() {
	[[ $(printf '%s\n%s\n' "$1" "$2" | sort -V | head -n 1) == "$2" ]]
}

maven_version() {
	"$1" --version 2>/dev/null | sed 's/\x1b\[[0-9;]*m//g' | sed -n 's/^Apache Maven \([0-9.]*\).*/\1/p'
}

missing_packages() {
	find_jdk || echo openjdk-17-jdk-headless
	have mvn || echo maven
	have git || echo git
	have unzip || echo unzip
	have fc-list || echo fontconfig
}

# What the workbench needs on top, and what its tests need: a screen that nobody looks at.
missing_for_window() {
	[[ -n $(ldconfig -p | grep -F libgtk-3.so) ]] || echo libgtk-3-0
}

missing_for_tests() {
	missing_for_window
	have Xvfb || echo xvfb
}

# What the guide is looked at with.
missing_for_browser() {
	have chromium || echo chromium
	have chromedriver || echo chromium-driver
}

# Installs what is named, or says what is missing.
install() {
	local missing=$*
	[[ -n $missing ]] || return 0
	if [[ $(id -u) != 0 ]] || ! have apt-get; then
		fail "please install: a JDK of version $java_needed or newer, Maven, git, unzip, fontconfig, for the window" \
			"GTK 3, for the tests Xvfb and Chromium with its driver; missing by their Debian names:" $missing
	fi
	say "installing" $missing
	mkdir -p "$state"
	if ! DEBIAN_FRONTEND=noninteractive apt-get -q update >"$state/install.log" 2>&1 \
		|| ! DEBIAN_FRONTEND=noninteractive apt-get -qy install --no-install-recommends $missing \
			>>"$state/install.log" 2>&1; then
		tail -n 5 "$state/install.log" >&2
		fail "could not install" $missing "(log: $state/install.log)"
	fi
}

# Sets maven to one that Tycho accepts: the installed one, or one it fetches, once, by its coordinates.
find_maven() {
	local cache=${XDG_CACHE_HOME:-$HOME/.cache}/padwright download archive
	maven=mvn
	version_at_least "$(maven_version mvn)" "$maven_needed" && return
	maven=$cache/apache-maven-$maven_fetched/bin/mvn
	[[ -x $maven ]] && return
	say "fetching Maven $maven_fetched"
	mkdir -p "$cache"
	download=$(mktemp -d "$cache/fetch.XXXXXX")
	archive=$download/org/apache/maven/apache-maven/$maven_fetched/apache-maven-$maven_fetched-bin.zip
	cp "$root/releng/maven/fetch.xml" "$download/pom.xml"
	# From a directory of its own: an old Maven cannot read this project's settings.
	if ! (cd "$download" && mvn -B -q ${MAVEN_ARGS-} -Dmaven.repo.local="$download" \
		-Dmaven.fetched="$maven_fetched" validate) >"$download/log" 2>&1; then
		tail -n 20 "$download/log" >&2
		fail "could not fetch Maven $maven_fetched; install Maven $maven_needed or newer"
	fi
	sha256sum --check --status <<<"$maven_sum  $archive" \
		|| fail "$archive is not the Maven $maven_fetched that was recorded; delete it and try again"
	unzip -q "$archive" -d "$download"
	mv -T "$download/apache-maven-$maven_fetched" "$cache/apache-maven-$maven_fetched" 2>/dev/null || [[ -x $maven ]]
	rm -rf "$download"
}

# Compiles what Maven needs on top to compare all it fetches with .mvn/checksums; .mvn/maven.config names the place.
extend_maven() {
	local classes=$state/maven home names
	[[ -d $classes && -z $(find "$root/releng/maven" -newer "$classes") ]] && return
	home=$("$maven" --version | sed 's/\x1b\[[0-9;]*m//g' | sed -n 's/^Maven home: //p')
	names=$(cd "$root/releng/maven" && ls -- *.java)
	rm -rf "$classes" "$classes.new"
	mkdir -p "$classes.new/META-INF/sisu"
	printf '%s\n' ${names//.java/} >"$classes.new/META-INF/sisu/javax.inject.Named"
	"$JAVA_HOME/bin/javac" -proc:none --release "$java_needed" -cp "$home/lib/*" -d "$classes.new" \
		"$root"/releng/maven/*.java || fail "could not compile releng/maven"
	mv "$classes.new" "$classes"
	touch "$classes"
}

# A screen of our own for windows under test, gone when the script ends.
start_screen() {
	local number
	number=$(mktemp)
	Xvfb -displayfd 4 -screen 0 3600x2400x24 -nolisten tcp 4>"$number" >/dev/null 2>&1 &
	screen=$!
	trap 'kill "$screen" 2>/dev/null || true' EXIT
	for _ in {1..100}; do
		[[ -s $number ]] && break
		sleep 0.1
	done
	[[ -s $number ]] || fail "Xvfb does not start"
	export DISPLAY=:$(<"$number") GDK_BACKEND=x11
	rm -f "$number"
}

set_up() {
	install $(missing_packages) "$@"
	find_jdk || fail "no JDK of version $java_needed or newer found"
	export JAVA_HOME
	find_maven
	mkdir -p "$state"
	extend_maven
	printf '%s\n' "$JAVA_HOME" >"$state/java-home"
}

run_maven() {
	"$maven" -B -ntp -f "$root/pom.xml" "$@"
}

# What a log of Maven says of artifacts that are not what was recorded, with the cure; fails if it says nothing of them.
say_what_differs() {
	local differing missing
	differing=$(sed -n 's/.*Artifact \([^ ]*\) trusted checksum mismatch.*/\1/p' "$1" | sort -u)
	missing=$(sed -n 's/.*Missing from .* trusted checksum.* for artifact \([^ ]*\).*/\1/p' "$1" | sort -u)
	[[ -z $differing ]] || say "not what was recorded in .mvn/checksums, so not used:" $differing \
		"(delete it from the local repository, so that it is fetched again; if it still differs, somebody changed it)"
	[[ -z $missing ]] || say "not recorded in .mvn/checksums, so not used:" $missing \
		"(after a change of versions run releng/checksums)"
	[[ -n $differing$missing ]]
}

# Has the new product keep what lets later starts be quick, then remembers what it was made of.
remember_build() {
	"$product/padwright" prepare 2>/dev/null
	printf '%s\n' "$1" >"$state/built"
}
