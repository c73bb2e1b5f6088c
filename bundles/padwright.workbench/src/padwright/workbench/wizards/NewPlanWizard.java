package padwright.workbench.wizards;

import org.eclipse.core.resources.IFolder;
import org.eclipse.jface.wizard.IWizardPage;

import padwright.workbench.editor.Places;

/** Makes a plan, with a row for every key of its system, and opens its text. */
public final class NewPlanWizard extends NewWizard {

	private final NewPlanPage page = new NewPlanPage();
	private final FirstLinesPage first = new FirstLinesPage(page);

	public NewPlanWizard() {
		super("new.plan");
	}

	@Override
	public void addPages() {
		addPage(page);
		addPage(first);
	}

	/** Another plan says the first lines, if one is chosen. */
	@Override
	public IWizardPage getNextPage(IWizardPage shown) {
		return shown == page && page.template().isPresent() ? null : super.getNextPage(shown);
	}

	@Override
	public boolean canFinish() {
		return page.isPageComplete() && (page.template().isPresent() || first.isPageComplete());
	}

	@Override
	public boolean performFinish() {
		PlanDraft draft = new PlanDraft(page.name(), page.title(), page.serial(), page.system().orElseThrow(),
				page.stock(), page.template(), first.said());
		IFolder shop = page.shop();
		String path = page.path();
		return carryOut(monitor -> NewDocument.write(shop, path, draft.text()))
				&& Places.editor(shop.getFile(path)).isPresent();
	}
}
