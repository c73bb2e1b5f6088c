package padwright.workup.sound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Cup;
import padwright.engine.acoustics.Dimension;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.LayoutFit;
import padwright.engine.acoustics.Limits;
import padwright.engine.acoustics.Measure;
import padwright.engine.acoustics.TargetNote;
import padwright.engine.length.Length;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.Merged;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;

/**
 * The least changes of a layout that bring its scale in tune. Changed are places and diameters of the holes that are open
 * in some of the notes, and where the bore ends. Holes keep their order, and stay within their cups and the bore; cups that
 * do not overlap along the tube never come to.
 */
public final class SystemFit {

	/** What a bench can keep to. */
	private static final long ROUNDED_NANOMETRES = 10_000;
	private static final double NANOMETRES = 1e9;
	/** Of bore that is left between the last place at which it is measured and its end, in m. */
	private static final double LEAST_PIECE = 1e-4;

	private final SystemSound system;
	private final FitRoom room;
	private final Layout layout;
	private final List<TargetNote> notes;
	private final Map<Dimension, Limits> free = new LinkedHashMap<>();

	private SystemFit(SystemSound system, FitRoom room) {
		this.system = system;
		this.room = room;
		layout = system.instrument().orElseThrow().layout();
		notes = ScaleSound.of(system).scale().stream()
				.filter(note -> note.octave() <= room.octaves() && note.sound().played().isPresent())
				.map(note -> note.tone().note()).toList();
		layout.holes().stream().filter(this::sounds).forEach(this::free);
		int last = layout.bore().size() - 1;
		double end = layout.bore().get(last).place();
		add(end(), Math.max(end - metres(room.move()), layout.bore().get(last - 1).place() + LEAST_PIECE),
				end + metres(room.move()));
	}

	/**
	 * The changes that tune a system, rounded to hundredths of a millimetre; sizes that stay are left out.
	 *
	 * @throws IllegalArgumentException if no note of those octaves has a resonance
	 * @throws java.util.NoSuchElementException if the system has no air column
	 */
	public static List<SizeChange> of(SystemSound system, FitRoom room) {
		return new SystemFit(system, room).changes();
	}

	private boolean sounds(Hole hole) {
		return notes.stream().anyMatch(note -> note.fingering().over(hole.name()) != Cover.CLOSED);
	}

	private void free(Hole hole) {
		int at = layout.holes().indexOf(hole);
		double least = hole.place() - metres(room.move());
		double most = hole.place() + metres(room.move());
		if (at > 0) {
			least = Math.max(least, hole.place() - towards(hole, layout.holes().get(at - 1)));
		}
		if (at + 1 < layout.holes().size()) {
			most = Math.min(most, hole.place() + towards(hole, layout.holes().get(at + 1)));
		}
		add(new Dimension(Dimension.Part.HOLE, hole.name(), Measure.PLACE), least, most);
		double widest = hole.cup().map(cup -> cup.diameter() - 2 * hole.rim()).orElse(Double.MAX_VALUE);
		add(new Dimension(Dimension.Part.HOLE, hole.name(), Measure.DIAMETER),
				Math.max(hole.diameter() / 2, hole.diameter() - metres(room.widen())),
				Math.max(hole.diameter(), Math.min(widest, hole.diameter() + metres(room.widen()))));
	}

	/** Half of what is free between two cups, or of their distance where they lie beside each other around the tube. */
	private static double towards(Hole hole, Hole neighbour) {
		double apart = Math.abs(hole.place() - neighbour.place());
		double free = apart - (reach(hole) + reach(neighbour)) / 2;
		return (free >= 0 ? free : apart) / 2;
	}

	/** How wide a hole with its rim or its cup is along the tube. */
	private static double reach(Hole hole) {
		return hole.cup().map(Cup::diameter).orElse(hole.diameter() + 2 * hole.rim());
	}

	private void add(Dimension dimension, double least, double most) {
		if (least < most) {
			free.put(dimension, new Limits(least, most));
		}
	}

	private Dimension end() {
		return new Dimension(Dimension.Part.BORE, Integer.toString(layout.bore().size()), Measure.PLACE);
	}

	private List<SizeChange> changes() {
		LayoutFit fit = LayoutFit.of(layout, system.model(), notes, free);
		List<SizeChange> changes = new ArrayList<>();
		fit.changes().forEach((dimension, metres) -> {
			Length by = new Length(Math.round(metres * NANOMETRES / ROUNDED_NANOMETRES) * ROUNDED_NANOMETRES);
			if (by.signum() != 0) {
				changes.addAll(dimension.equals(end()) ? ofTheEnd(by) : List.of(change(dimension, by)));
			}
		});
		return changes;
	}

	/** A bore that is measured to the end of its joint goes with it. */
	private List<SizeChange> ofTheEnd(Length by) {
		EffectiveJoint joint = system.mechanism().system().joints().stream().reduce((upper, lower) -> lower).orElseThrow();
		Length was = joint.length().orElseThrow();
		SizeChange longer = new SizeChange(joint, SizeChange.Size.LENGTH, by);
		return joint.bore().get(joint.bore().size() - 1).position()
				.filter(was::equals)
				.map(place -> List.of(longer, new SizeChange(joint, SizeChange.Size.BORE_END, by)))
				.orElse(List.of(longer));
	}

	private SizeChange change(Dimension dimension, Length by) {
		SystemMechanism mechanism = system.mechanism();
		SystemHole hole = mechanism.holes().stream().filter(each -> each.name().equals(dimension.name())).findFirst()
				.orElseThrow();
		Optional<Merged<?, ?>> own = mechanism.definition(hole).map(written -> written);
		return new SizeChange(own.orElseGet(() -> mechanism.keysOver(hole).get(0)),
				dimension.measure() == Measure.PLACE ? SizeChange.Size.PLACE : SizeChange.Size.DIAMETER, by);
	}

	private static double metres(Length length) {
		return length.nanometres() / NANOMETRES;
	}
}
