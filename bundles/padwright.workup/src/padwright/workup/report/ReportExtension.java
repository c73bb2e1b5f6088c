package padwright.workup.report;

import padwright.workup.extensions.NamedExtension;
import padwright.workup.service.ServicePlan;

/**
 * A report of others about a plan. Found by its entry in {@code META-INF/services/padwright.workup.report.ReportExtension}
 * of an extension; it has a public constructor without parameters. It is called in many threads.
 */
public interface ReportExtension extends NamedExtension {

	/**
	 * The report, in the language of the user. The plan may be half typed: missing values and broken links.
	 *
	 * @throws IllegalArgumentException in the user's words, if the plan has not what it needs
	 */
	Report report(ServicePlan plan);
}
