package padwright.workbench.wizards;

import org.eclipse.core.resources.IFolder;

import padwright.workbench.editor.Places;
import padwright.workbench.prefs.Preferences;

/** Makes a plan, with a row for every key of its system, and opens its text. */
public final class NewPlanWizard extends NewWizard {

	private final NewPlanPage page = new NewPlanPage();

	public NewPlanWizard() {
		super("new.plan");
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		PlanDraft draft = new PlanDraft(page.name(), page.title(), page.serial(), page.system().orElseThrow(),
				page.stock(), page.template(), Preferences.tolerance());
		IFolder shop = page.shop();
		String path = page.path();
		return carryOut(monitor -> NewDocument.write(shop, path, draft.text()))
				&& Places.editor(shop.getFile(path)).isPresent();
	}
}
