package padwright.workbench.wizards;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import org.eclipse.core.resources.IFolder;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;

import padwright.language.start.FileName;
import padwright.workbench.Messages;

/** The page of a new document: its shop, its name and its title, and what it refers to in the shop. */
abstract class DocumentPage extends StartPage {

	private final String folder;
	private final String extension;
	private final List<IFolder> shops = ShopChoice.shops();
	private ShopIndex index = ShopIndex.EMPTY;
	private Optional<String> waiting = Optional.empty();
	private IFolder asked;
	private Combo shop;
	private Text name;
	private Text title;

	/**
	 * @param folder of the shop that documents of the kind are put into
	 * @param extension of their files
	 */
	DocumentPage(String key, String folder, String extension) {
		super(key);
		this.folder = folder;
		this.extension = extension;
	}

	/** Adds the fields for what the document refers to. */
	abstract void fillReferences(Form form);

	/** Offers what the shop has. */
	abstract void offer(ShopIndex ofShop);

	/** The names that are taken. */
	abstract List<ShopIndex.Entry> taken(ShopIndex ofShop);

	/** What is wrong with the references. */
	abstract Optional<String> referenceFault();

	@Override
	final void fill(Form form) {
		shop = form.choice("new.in", shops.stream().map(IFolder::getName).toList());
		name = form.text("new.name", "");
		title = form.text("new.title", "");
		fillReferences(form);
		ShopChoice.current(shops).ifPresent(current -> shop.select(shops.indexOf(current)));
		name.setFocus();
	}

	@Override
	final Optional<String> fault() {
		if (shops.isEmpty()) {
			return Optional.of(Messages.get("new.noShop"));
		}
		if (asked != shop()) {
			ask(shop());
		}
		return waiting.or(() -> faultOf(name(), ShopIndex.names(taken(index)).contains(name()))).or(this::fileFault)
				.or(this::referenceFault);
	}

	private Optional<String> fileFault() {
		return Files.exists(NewDocument.path(shop(), path())) ? Optional.of(Messages.get("new.exists", path()))
				: Optional.empty();
	}

	private void ask(IFolder ofShop) {
		asked = ofShop;
		index = ShopIndex.EMPTY;
		waiting = Optional.of(Messages.get("new.reading"));
		CompletableFuture<ShopIndex> answer = ShopIndex.of(ofShop.getLocation().toPath());
		Display display = shop.getDisplay();
		answer.whenComplete((found, failed) -> display.asyncExec(() -> {
			if (!shop.isDisposed() && asked == ofShop) {
				index = failed == null ? found : ShopIndex.EMPTY;
				waiting = failed == null ? Optional.empty() : Optional.of(Messages.get("new.unread"));
				offer(index);
				look();
			}
		}));
	}

	final IFolder shop() {
		return shops.get(shop.getSelectionIndex());
	}

	final ShopIndex index() {
		return index;
	}

	final String name() {
		return name.getText().strip();
	}

	final String title() {
		return title.getText().strip();
	}

	/** The file to be, in its shop. */
	final String path() {
		return folder + "/" + FileName.of(name(), extension);
	}

	/** Fills a choice, with "none" before the names where that is possible; what was chosen stays so. */
	static void offer(Combo combo, List<ShopIndex.Entry> entries, boolean orNone) {
		String before = combo.getText();
		List<String> items = new ArrayList<>(orNone ? List.of(Messages.get("new.none")) : List.of());
		items.addAll(ShopIndex.names(entries));
		combo.setItems(items.toArray(String[]::new));
		combo.select(Math.max(0, items.indexOf(before)));
	}

	/** What is chosen, unless that is "none". */
	static Optional<ShopIndex.Entry> chosen(Combo combo, List<ShopIndex.Entry> entries) {
		return ShopIndex.find(entries, combo.getText());
	}
}
