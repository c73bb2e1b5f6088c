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
import padwright.engine.evidence.GapBand;
import padwright.engine.rim.RimProfile;

/**
 * Where the gap lies, much enlarged, as a band on the rim: dark as far as it surely reaches, light as far as it may, with a line
 * at its middle. Where it is wide, the pad leaks.
 */
record GapRing(ClockFace face, GapBand gap, double fullGapThou) {

	private static final Ink SURE = Ink.grey(150);
	private static final Ink POSSIBLE = Ink.grey(215);
	private static final double NM_PER_THOU = 25_400;
	/** How far a point's tangent reaches toward its neighbours (Catmull-Rom: a sixth of the chord across it). */
	private static final double TANGENT = 1.0 / 6;

	List<Element> draw() {
		return List.of(filled(gap.high(), POSSIBLE), filled(gap.low(), SURE),
				new Drawn(curve(gap.mid()), Style.stroked(Stroke.of(Ink.BLACK, face.mm(0.16)))));
	}

	private Element filled(RimProfile edge, Ink ink) {
		Geometry rim = new Circle(0, 0, face.mm(ClockFace.RIM));
		return new Drawn(Path.of(curve(edge), rim), new Style(Optional.of(new SolidFill(ink)), Optional.empty()));
	}

	/** Both edges of the band. */
	List<Element> drawDashed(Ink ink) {
		Style dashes = Style.stroked(Stroke.of(ink, face.mm(0.3)).dashed(face.mm(0.9), face.mm(0.5)));
		return List.of(new Drawn(curve(gap.low()), dashes), new Drawn(curve(gap.high()), dashes));
	}

	private Path curve(RimProfile edge) {
		Path.Recorder curve = new Path.Recorder();
		curve.moveTo(x(edge, 0), y(edge, 0));
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			curve.curveTo(
					x(edge, station) + TANGENT * (x(edge, station + 1) - x(edge, station - 1)),
					y(edge, station) + TANGENT * (y(edge, station + 1) - y(edge, station - 1)),
					x(edge, station + 1) - TANGENT * (x(edge, station + 2) - x(edge, station)),
					y(edge, station + 1) - TANGENT * (y(edge, station + 2) - y(edge, station)),
					x(edge, station + 1), y(edge, station + 1));
		}
		curve.close();
		return curve.path();
	}

	private double x(RimProfile edge, int station) {
		return face.x(radius(edge, station), face.angle(station));
	}

	private double y(RimProfile edge, int station) {
		return face.y(radius(edge, station), face.angle(station));
	}

	private double radius(RimProfile edge, int station) {
		double thou = edge.nanometresAt(Math.floorMod(station, ClockHour.STATIONS)) / NM_PER_THOU;
		double shown = Math.max(0, Math.min(thou, fullGapThou));
		return ClockFace.RIM + shown / fullGapThou * (ClockFace.BAND_OUTER - ClockFace.RIM);
	}
}
