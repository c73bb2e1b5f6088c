package padwright.workbench.wizards;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Combo;

/** A new key system, and which it extends. */
final class NewSystemPage extends DocumentPage {

	private Combo base;

	NewSystemPage() {
		super("new.system", "systems", "keys");
	}

	@Override
	void fillReferences(Form form) {
		base = form.choice("new.system.base", List.of());
	}

	@Override
	void offer(ShopIndex ofShop) {
		offer(base, ofShop.systems(), true);
	}

	@Override
	List<ShopIndex.Entry> taken(ShopIndex ofShop) {
		return ofShop.systems();
	}

	@Override
	Optional<String> referenceFault() {
		return Optional.empty();
	}

	Optional<String> base() {
		return chosen(base, index().systems()).map(ShopIndex.Entry::name);
	}
}
