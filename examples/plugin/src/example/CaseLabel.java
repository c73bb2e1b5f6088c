package example;

import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.model.plan.Plan;
import padwright.paper.page.PaperSize;
import padwright.paper.plan.PaperExtension;
import padwright.workup.solve.PlanSolution;

/** A label for the case, in the upper left corner of a sheet. */
public final class CaseLabel implements PaperExtension {

	@Override
	public String name() {
		return "label";
	}

	@Override
	public String title() {
		return "Label for the case";
	}

	@Override
	public List<Scene> pages(PlanSolution solution, PaperSize size) {
		Plan plan = solution.plan().plan();
		return List.of(new Scene(title(), size.width(), size.height(),
				List.of(new Drawn(new Rectangle(15, 15, 90, 30), Style.stroked(Ink.BLACK, 0.4)),
						Text.of(plan.getName(), 20, 28, Face.BOLD, 8),
						Text.of(String.valueOf(plan.getSerial()), 20, 39, Face.REGULAR, 5))));
	}
}
