package padwright.paper.plan;

import java.util.List;

import padwright.drawing.scene.Scene;
import padwright.paper.page.PaperSize;
import padwright.workup.extensions.NamedExtension;
import padwright.workup.solve.PlanSolution;

/**
 * A paper of others, drawn of a plan. Found by its entry in {@code META-INF/services/padwright.paper.plan.PaperExtension} of
 * an extension; it has a public constructor without parameters. It is called in many threads.
 */
public interface PaperExtension extends NamedExtension {

	/**
	 * The pages, each a scene in millimetres as large as the sheet.
	 *
	 * @throws IllegalArgumentException in the user's words, if the plan has not what it needs
	 */
	List<Scene> pages(PlanSolution solution, PaperSize size);
}
