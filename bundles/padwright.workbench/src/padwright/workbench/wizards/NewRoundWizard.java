package padwright.workbench.wizards;

import java.util.Optional;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.ui.IWorkbench;

import padwright.workbench.bench.Bench;
import padwright.workbench.bench.PlanOnBench;

/** Adds a round of readings to the plan on the bench, as one step of undo. */
public final class NewRoundWizard extends NewWizard {

	private Bench bench;
	private RoundKeysPage keys;
	private RoundGridPage readings;

	public NewRoundWizard() {
		super("new.round");
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		bench = Bench.of(workbench.getActiveWorkbenchWindow());
	}

	@Override
	public void addPages() {
		Optional<PlanOnBench> plan = bench.shown().plan();
		keys = new RoundKeysPage(plan);
		readings = new RoundGridPage(plan);
		addPage(keys);
		addPage(readings);
	}

	@Override
	public IWizardPage getNextPage(IWizardPage page) {
		IWizardPage next = super.getNextPage(page);
		if (next == readings && readings.getControl() != null && keys.isPageComplete()) {
			readings.show(keys.chosen(), keys.ownHours());
		}
		return next;
	}

	@Override
	public boolean canFinish() {
		return getContainer().getCurrentPage() == readings && readings.isPageComplete();
	}

	@Override
	public boolean performFinish() {
		bench.write(readings.edits());
		return true;
	}
}
