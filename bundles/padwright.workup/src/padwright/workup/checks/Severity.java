package padwright.workup.checks;

/** How grave a finding is. */
public enum Severity {
	ERROR, WARNING, INFO
}
