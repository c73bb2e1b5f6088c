package padwright.workbench.papers;

import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IWorkbenchPage;

import padwright.drawing.scene.Scene;
import padwright.paper.page.PaperSize;
import padwright.paper.plan.PaperExtension;
import padwright.workbench.Messages;
import padwright.workbench.session.RowProgress;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Solves a plan and draws a paper of it that an extension adds. */
final class AddedPaperJob extends PaperJob {

	private final String name;
	private final Added<PaperExtension> paper;
	private final ServicePlan plan;

	private AddedPaperJob(String name, Added<PaperExtension> paper, ServicePlan plan, IWorkbenchPage page) {
		super(Extensions.installed().ask(paper, paper.thing()::title, name), page);
		this.name = name;
		this.paper = paper;
		this.plan = plan;
	}

	/** @throws IllegalArgumentException if no extension adds a paper of this name */
	static AddedPaperJob of(String name, ServicePlan plan, IWorkbenchPage page) {
		Added<PaperExtension> paper = Extensions.installed().byName(PaperExtension.class).get(name);
		if (paper == null) {
			throw new IllegalArgumentException(name);
		}
		return new AddedPaperJob(name, paper, plan, page);
	}

	@Override
	protected Pages draw(PaperSize size, IProgressMonitor monitor) {
		monitor.beginTask(getName(), plan.jobs().size());
		PlanSolution solution = PlanSolver.solve(plan, WrittenAnswers.KEEP, new RowProgress(monitor));
		List<Scene> pages = Extensions.installed()
				.answer(paper, IllegalArgumentException.class, () -> List.copyOf(paper.thing().pages(solution, size)))
				.orElseThrow(() -> new IllegalArgumentException(Messages.get("extensions.failed")));
		return new Pages(plan.plan().getName() + "-" + name, getName(), pages);
	}
}
