package padwright.workbench.wizards;

import java.util.Optional;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.widgets.Composite;

import padwright.language.start.NameFault;
import padwright.workbench.Messages;
import padwright.workup.words.ShownUnit;

/** A page of a wizard that looks at its fields whenever one changes, and can only be left when none has a fault. */
abstract class StartPage extends WizardPage {

	private boolean touched;

	/** @param key of its title and, with {@code .about} behind it, of what it says at first, which may name the unit that is shown */
	StartPage(String key) {
		super(key, Messages.get(key), null);
		setDescription(Messages.get(key + ".about", ShownUnit.symbol()));
	}

	abstract void fill(Form form);

	/** What is wrong with what is in the fields; nothing where all is right. */
	abstract Optional<String> fault();

	@Override
	public final void createControl(Composite parent) {
		Form form = new Form(parent, () -> {
			touched = true;
			look();
		});
		fill(form);
		setControl(form.area());
		look();
	}

	/** Looks at the fields. An empty page is incomplete, but there is nothing to complain of yet. */
	final void look() {
		Optional<String> fault = fault();
		setErrorMessage(touched ? fault.orElse(null) : null);
		setPageComplete(fault.isEmpty());
	}

	/** What is wrong with a name that is to be given. */
	static Optional<String> faultOf(String name, boolean taken) {
		Optional<String> fault = NameFault.of(name).map(kind -> switch (kind) {
			case MISSING -> Messages.get("new.name.missing");
			case SIGNS -> Messages.get("new.name.signs", name);
			case KEYWORD -> Messages.get("new.name.keyword", name);
		});
		return fault.or(() -> taken ? Optional.of(Messages.get("new.name.taken", name)) : Optional.empty());
	}
}
