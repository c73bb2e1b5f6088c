package padwright.workbench.wizards;

import org.eclipse.core.resources.IFolder;

import padwright.language.start.SystemText;
import padwright.workbench.editor.Places;

/** Makes a key system and opens its text. */
public final class NewSystemWizard extends NewWizard {

	private final NewSystemPage page = new NewSystemPage();

	public NewSystemWizard() {
		super("new.system");
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		String text = SystemText.of(page.name(), page.title(), page.base());
		IFolder shop = page.shop();
		String path = page.path();
		return carryOut(monitor -> NewDocument.write(shop, path, text))
				&& Places.editor(shop.getFile(path)).isPresent();
	}
}
