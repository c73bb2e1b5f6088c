package padwright.views.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;
import padwright.views.Figures;
import padwright.views.Palette;

/**
 * Bore, chimney with its rim, cup with its pad, arm and rod, without the sizes. The cup is drawn shut, and as a broken outline
 * as far open as it goes.
 */
record CutHole(HoleSection section, Palette palette) {

	private static final double METAL = HoleFrame.METAL;
	static final double ROD = 1.4;
	private static final int STEPS = 60;

	List<Element> draw() {
		List<Element> elements = new ArrayList<>();
		elements.add(bore());
		elements.add(chimney());
		if (section.hasCup()) {
			elements.add(open());
			elements.addAll(shut());
			elements.addAll(rod());
		}
		return elements;
	}

	private double half(HoleSize size) {
		return section.mm(size) / 2;
	}

	private double rim() {
		return -section.mm(HoleSize.CHIMNEY);
	}

	/** The air in the tube and, where the hole is, the opening of its wall. */
	private Element bore() {
		double radius = half(HoleSize.BORE);
		double from = Math.asin(Math.min(1, half(HoleSize.HOLE) / radius));
		Path.Recorder wall = new Path.Recorder();
		for (int step = 0; step <= STEPS; step++) {
			double angle = from + (2 * Math.PI - 2 * from) * step / STEPS;
			double x = radius * Math.sin(angle);
			double y = radius - radius * Math.cos(angle);
			if (step == 0) {
				wall.moveTo(x, y);
			} else {
				wall.lineTo(x, y);
			}
		}
		return new Drawn(wall.path(), Style.of(new SolidFill(palette.tint(palette.read(), 0.07)),
				Stroke.of(palette.ink(), 0.35)));
	}

	/** The wall of the hole on either side, down to the bore; undercut where it is. */
	private Element chimney() {
		double inner = half(HoleSize.HOLE);
		double wide = section.mm(HoleSize.RIM);
		double undercut = Math.min(Figures.mm(section.undercut()) / 2, wide * 0.9);
		Path.Recorder walls = new Path.Recorder();
		for (int side = -1; side <= 1; side += 2) {
			walls.moveTo(side * inner, rim());
			walls.lineTo(side * (inner + wide), rim());
			walls.lineTo(side * (inner + wide), foot(inner + wide));
			walls.lineTo(side * (inner + undercut), foot(inner + undercut));
			walls.close();
		}
		boolean isKnown = section.sizes().get(HoleSize.RIM).isKnown() && section.sizes().get(HoleSize.CHIMNEY).isKnown();
		Stroke edge = Stroke.of(palette.ink(), 0.2);
		return new Drawn(walls.path(), Style.of(new SolidFill(palette.tint(palette.quiet(), isKnown ? 0.6 : 0.2)),
				isKnown ? edge : edge.dashed(0.6, 0.4)));
	}

	/** The y of the bore so far off the middle. */
	private double foot(double x) {
		double radius = half(HoleSize.BORE);
		return radius - Math.sqrt(Math.max(0, radius * radius - x * x));
	}

	private Path cup() {
		double wide = half(HoleSize.CUP);
		double floor = rim() - section.mm(HoleSize.DEPTH);
		Path.Recorder cup = new Path.Recorder();
		cup.moveTo(-wide - METAL, rim());
		cup.lineTo(-wide - METAL, floor);
		cup.curveTo(-wide - METAL, floor - METAL, -wide - METAL, floor - METAL, -wide, floor - METAL);
		cup.lineTo(wide, floor - METAL);
		cup.curveTo(wide + METAL, floor - METAL, wide + METAL, floor - METAL, wide + METAL, floor);
		cup.lineTo(wide + METAL, rim());
		cup.lineTo(wide, rim());
		cup.lineTo(wide, floor);
		cup.lineTo(-wide, floor);
		cup.lineTo(-wide, rim());
		cup.close();
		return cup.path();
	}

	private List<Element> shut() {
		double wide = half(HoleSize.CUP) - 0.15;
		double floor = rim() - section.mm(HoleSize.DEPTH);
		return List.of(
				new Drawn(new Rectangle(-wide, floor + 0.15, 2 * wide, section.mm(HoleSize.DEPTH) - 0.15),
						Style.of(new SolidFill(palette.tint(palette.warning(), 0.25)),
								Stroke.of(palette.tint(palette.warning(), 0.6), 0.12))),
				new Drawn(cup(), Style.of(new SolidFill(palette.tint(palette.quiet(), 0.45)),
						Stroke.of(palette.ink(), 0.2))));
	}

	private double axis() {
		return section.hinge() * section.mm(HoleSize.ARM);
	}

	private double axisHeight() {
		return rim() - section.mm(HoleSize.DEPTH) / 2;
	}

	/** Turned about the rod until the middle of the pad stands as high as its rise. */
	private Element open() {
		double arm = Math.max(section.mm(HoleSize.ARM), 0.1);
		double turn = section.hinge() * Math.toDegrees(Math.asin(Math.min(1, section.mm(HoleSize.RISE) / arm)));
		Transform about = Transform.translation(axis(), axisHeight()).after(Transform.rotation(turn))
				.after(Transform.translation(-axis(), -axisHeight()));
		Stroke broken = Stroke.of(palette.tint(palette.quiet(), 0.8), 0.2).dashed(0.9, 0.6);
		return new Group(Optional.empty(), Optional.empty(), about, List.of(new Drawn(cup(), Style.stroked(broken))));
	}

	private List<Element> rod() {
		boolean isKnown = section.sizes().get(HoleSize.ARM).isKnown();
		double edge = section.hinge() * (half(HoleSize.CUP) + METAL);
		Stroke arm = Stroke.of(palette.ink(), 0.8);
		Stroke metal = Stroke.of(palette.tint(palette.quiet(), 0.45), 0.5);
		List<Element> elements = new ArrayList<>(List.of(
				new Drawn(new Line(edge, axisHeight(), axis(), axisHeight()),
						Style.stroked(isKnown ? arm : metal.dashed(0.8, 0.5))),
				new Drawn(new Circle(axis(), axisHeight(), ROD), Style.of(new SolidFill(palette.ground()),
						Stroke.of(isKnown ? palette.ink() : palette.quiet(), 0.35))),
				new Drawn(new Circle(axis(), axisHeight(), 0.3), Style.filled(palette.quiet()))));
		section.rod().ifPresent(rod -> elements.add(Text.of(rod, axis() + section.hinge() * (ROD + 0.8), axisHeight() + 0.55,
				Face.CONDENSED, 1.6).anchored(section.isFar() ? Anchor.END : Anchor.START).in(palette.quiet())));
		return elements;
	}
}
