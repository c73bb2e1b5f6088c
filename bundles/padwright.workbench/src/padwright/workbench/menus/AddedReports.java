package padwright.workbench.menus;

import padwright.workup.report.ReportExtension;

/** The reports of extensions. */
public final class AddedReports extends AddedItems {

	public AddedReports() {
		super(ReportExtension.class, "padwright.workbench.report", "padwright.workbench.report.command");
	}
}
