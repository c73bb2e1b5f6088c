package padwright.workbench.wizards;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;

import padwright.workbench.Messages;
import padwright.workbench.session.OpenShops;

/** Makes a shop folder and opens it. */
public final class NewShopWizard extends NewWizard {

	private final NewShopPage page = new NewShopPage();

	public NewShopWizard() {
		super("new.shop");
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Path folder = page.folder();
		boolean system = page.withStarterSystem();
		Optional<String> stock = page.starterStock();
		return carryOut(monitor -> {
			try {
				NewShopFolder.make(folder, system, stock);
			} catch (IOException failed) {
				throw new CoreException(
						Status.error(Messages.get("save.failed", folder, failed.getLocalizedMessage()), failed));
			}
			OpenShops.open(folder, monitor);
		});
	}
}
