package padwright.workbench.menus;

import padwright.paper.plan.PaperExtension;

/** The papers of extensions. */
public final class AddedPapers extends AddedItems {

	public AddedPapers() {
		super(PaperExtension.class, "padwright.workbench.paper", "padwright.workbench.paper.kind");
	}
}
