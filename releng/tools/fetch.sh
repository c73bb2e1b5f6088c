# Sourced by scripts that look at the code: fetches their tools, once for each version of their list.

# The folder with the jars of a tool, by the profile of pom.xml that names them.
tool() {
	echo "$state/tools/$1-$(cksum <"$root/releng/tools/pom.xml" | tr ' ' -)"
}

# From outside the tree: what never ships has no recorded checksum.
fetch_tool() {
	local folder log=$state/tools.log
	folder=$(tool "$1")
	[[ ! -d $folder ]] || return 0
	find_maven
	mkdir -p "$state/tools"
	if ! (cd / && "$maven" -B -ntp -q -f "$root/releng/tools/pom.xml" ${MAVEN_ARGS-} -P "$1" -Dtool.folder="$folder.new" \
		-Daether.artifactResolver.postProcessor.trustedChecksums=false package) >"$log" 2>&1; then
		grep -E '^\[ERROR\]' "$log" | head -n 5 >&2 || true
		fail "could not fetch the tools named $1 (log: $log)"
	fi
	rm -rf "$root/releng/tools/target"
	mv "$folder.new" "$folder"
}
