package padwright.workbench.wizards;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Text;

import padwright.workbench.Messages;

/** Where a new shop is to be, and what is in it at first. */
final class NewShopPage extends StartPage {

	private static final String FIRST_STOCK = "Bench";

	private Text parent;
	private Text name;
	private Button withSystem;
	private Button withStock;
	private Text stock;

	NewShopPage() {
		super("new.shop");
	}

	@Override
	void fill(Form form) {
		name = form.text("new.shop.name", "");
		parent = form.text("new.shop.parent", System.getProperty("user.home"), "new.browse", this::browse);
		withSystem = form.check("new.shop.withSystem", true);
		withStock = form.check("new.shop.withStock", true);
		stock = form.text("new.shop.stock", FIRST_STOCK);
	}

	private void browse() {
		DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.SAVE);
		dialog.setText(Messages.get("new.shop.folder.title"));
		dialog.setFilterPath(parent.getText());
		String chosen = dialog.open();
		if (chosen != null) {
			parent.setText(chosen);
		}
	}

	@Override
	Optional<String> fault() {
		stock.setEnabled(withStock.getSelection());
		return folderFault().or(() -> starterStock().flatMap(wanted -> faultOf(wanted, false)));
	}

	private Optional<String> folderFault() {
		String wanted = name.getText().strip();
		if (wanted.isEmpty()) {
			return Optional.of(Messages.get("new.name.missing"));
		}
		try {
			Path in = Path.of(parent.getText());
			if (!in.isAbsolute() || !Files.isDirectory(in)) {
				return Optional.of(Messages.get("new.noFolder", in));
			}
			boolean isName = Path.of(wanted).getNameCount() == 1 && !wanted.startsWith(".")
					&& in.resolve(wanted).getParent().equals(in);
			return !isName ? Optional.of(Messages.get("new.noFileName", wanted))
					: isFree(in.resolve(wanted)) ? Optional.empty()
							: Optional.of(Messages.get("new.exists", in.resolve(wanted)));
		} catch (InvalidPathException noPath) {
			return Optional.of(Messages.get("new.noFileName", noPath.getInput()));
		}
	}

	private static boolean isFree(Path folder) {
		if (!Files.exists(folder)) {
			return true;
		}
		try (DirectoryStream<Path> content = Files.newDirectoryStream(folder)) {
			return !content.iterator().hasNext();
		} catch (IOException noFolderOfOurs) {
			return false;
		}
	}

	/** The folder to be. */
	Path folder() {
		return Path.of(parent.getText()).resolve(name.getText().strip());
	}

	/** Whether there is to be a key system to begin with. */
	boolean withStarterSystem() {
		return withSystem.getSelection();
	}

	/** The name of the stock list to begin with. */
	Optional<String> starterStock() {
		return withStock.getSelection() ? Optional.of(stock.getText().strip()) : Optional.empty();
	}
}
