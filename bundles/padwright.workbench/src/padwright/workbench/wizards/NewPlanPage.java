package padwright.workbench.wizards;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

import padwright.model.keysystem.KeySystem;
import padwright.model.stock.Stock;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.PlanOnBench;
import padwright.workbench.bench.Workpiece;

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
		onBench().map(Workpiece::keySystem).flatMap(known -> known).map(KeySystem::getName)
				.ifPresent(open -> choose(system, open));
		offer(stock, ofShop.stocks(), true);
		if (!ofShop.stocks().isEmpty()) {
			stock.select(1);
		}
		onBench().filter(PlanOnBench.class::isInstance).map(PlanOnBench.class::cast)
				.flatMap(plan -> plan.service().stock()).map(Stock::getName).ifPresent(open -> choose(stock, open));
		offer(template, ofShop.plans(), true);
	}

	/** What is open in the window: most plans are for its system, from its stock. */
	private static Optional<Workpiece> onBench() {
		return Optional.ofNullable(PlatformUI.getWorkbench().getActiveWorkbenchWindow())
				.flatMap(window -> Bench.of(window).shown().work());
	}

	private static void choose(Combo combo, String item) {
		int index = combo.indexOf(item);
		if (index >= 0) {
			combo.select(index);
		}
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
