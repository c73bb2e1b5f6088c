package padwright.workbench.wizards;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;

import padwright.workbench.Messages;

/** A new plan: for which instrument, from which stock, and after which other plan. */
final class NewPlanPage extends DocumentPage {

	private Text serial;
	private Combo system;
	private Combo stock;
	private Combo template;

	NewPlanPage() {
		super("new.plan", "plans", "plan");
	}

	@Override
	void fillReferences(Form form) {
		serial = form.text("new.plan.serial", "");
		system = form.choice("new.plan.system", List.of());
		stock = form.choice("new.plan.stock", List.of());
		template = form.choice("new.plan.template", List.of());
	}

	@Override
	void offer(ShopIndex ofShop) {
		offer(system, ofShop.systems(), false);
		offer(stock, ofShop.stocks(), true);
		if (!ofShop.stocks().isEmpty()) {
			stock.select(1);
		}
		offer(template, ofShop.plans(), true);
	}

	@Override
	List<ShopIndex.Entry> taken(ShopIndex ofShop) {
		return ofShop.plans();
	}

	@Override
	Optional<String> referenceFault() {
		return system().isPresent() ? Optional.empty() : Optional.of(Messages.get("new.plan.noSystem"));
	}

	Optional<ShopIndex.Entry> system() {
		return chosen(system, index().systems());
	}

	Optional<ShopIndex.Entry> stock() {
		return chosen(stock, index().stocks());
	}

	/** The plan whose first lines the new one takes. */
	Optional<ShopIndex.Entry> template() {
		return chosen(template, index().plans());
	}

	String serial() {
		return serial.getText().strip();
	}
}
