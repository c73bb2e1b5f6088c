package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.Map;

import padwright.workup.report.Report;

/**
 * A report, and where the plans are that its rows tell of.
 *
 * @param plans files by the names of plans; that of the plan that the report is of goes by the empty name
 */
record Made(Report report, Map<String, Path> plans) {

	static final String OWN = "";

	Made {
		plans = Map.copyOf(plans);
	}
}
