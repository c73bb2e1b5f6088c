package padwright.drawing.clock;

import java.util.List;
import java.util.Optional;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Path;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.engine.clock.ClockHour;
import padwright.engine.rim.RimProfile;

/** The gap, much enlarged, as a grey bulge on the rim: where it is wide, the pad leaks. */
record GapBand(ClockFace face, RimProfile gap, double fullGapThou) {

	private static final Ink BULGE = Ink.grey(178);
	private static final double NM_PER_THOU = 25_400;
	/** How far a point's tangent reaches toward its neighbours (Catmull-Rom: a sixth of the chord across it). */
	private static final double TANGENT = 1.0 / 6;

	List<Element> draw() {
		Geometry rim = new Circle(0, 0, face.mm(ClockFace.RIM));
		Path curve = curve();
		return List.of(
				new Drawn(Path.of(curve, rim), new Style(Optional.of(new SolidFill(BULGE)), Optional.empty())),
				new Drawn(curve, Style.stroked(Stroke.of(Ink.BLACK, face.mm(0.16)))));
	}

	Element drawDashed(Ink ink) {
		return new Drawn(curve(),
				Style.stroked(Stroke.of(ink, face.mm(0.34)).dashed(face.mm(0.9), face.mm(0.5))));
	}

	private Path curve() {
		Path.Recorder curve = new Path.Recorder();
		curve.moveTo(x(0), y(0));
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			curve.curveTo(
					x(station) + TANGENT * (x(station + 1) - x(station - 1)),
					y(station) + TANGENT * (y(station + 1) - y(station - 1)),
					x(station + 1) - TANGENT * (x(station + 2) - x(station)),
					y(station + 1) - TANGENT * (y(station + 2) - y(station)),
					x(station + 1), y(station + 1));
		}
		curve.close();
		return curve.path();
	}

	private double x(int station) {
		return face.x(radius(station), face.angle(station));
	}

	private double y(int station) {
		return face.y(radius(station), face.angle(station));
	}

	private double radius(int station) {
		double thou = gap.nanometresAt(Math.floorMod(station, ClockHour.STATIONS)) / NM_PER_THOU;
		double shown = Math.max(0, Math.min(thou, fullGapThou));
		return ClockFace.RIM + shown / fullGapThou * (ClockFace.BAND_OUTER - ClockFace.RIM);
	}
}
