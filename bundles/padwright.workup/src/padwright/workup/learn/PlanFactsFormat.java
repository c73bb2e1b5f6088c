package padwright.workup.learn;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.EOFException;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.calibration.CalibrationRound;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.RimCondition;
import padwright.engine.film.PartialShim;
import padwright.engine.learning.FeelScatter.Pair;
import padwright.engine.learning.LifeBracket;
import padwright.engine.length.Length;
import padwright.engine.rim.RimReading;
import padwright.model.plan.Saliva;
import padwright.workup.calibration.PadCalibration.Evidence;
import padwright.workup.learn.PlanFacts.FeltGap;
import padwright.workup.learn.PlanFacts.PadSeen;
import padwright.workup.learn.PlanFacts.Visit;
import padwright.workup.words.Phrase;

/** How {@link PlanFacts} are kept from one run to the next: each part in the order of its record, a count before each list. */
public final class PlanFactsFormat {

	/** More of anything in one plan is a sign of a spoilt file. */
	private static final int MOST = 1 << 20;

	/** What kind of value of a phrase follows. */
	private static final int COUNT = 0;
	private static final int HOUR = 1;
	private static final int SAID = 2;

	private PlanFactsFormat() {
	}

	private interface Reading<T> {
		T read(DataInput in) throws IOException;
	}

	private interface Writing<T> {
		void write(DataOutput out, T value) throws IOException;
	}

	/** @throws IOException if they cannot be read, or are spoilt */
	public static PlanFacts read(DataInput in) throws IOException {
		Optional<Visit> visit = optional(in, PlanFactsFormat::visit);
		Optional<FeltTwice.Pairs> felt = optional(in, from -> new FeltTwice.Pairs(list(from, PlanFactsFormat::length),
				list(from, pair -> new Pair(pair.readByte(), pair.readByte()))));
		Map<RimCondition, List<LifeBracket>> gaps = new EnumMap<>(RimCondition.class);
		for (int left = count(in); left > 0; left--) {
			gaps.put(RimCondition.values()[in.readByte()],
					list(in, from -> new LifeBracket(from.readDouble(), from.readDouble())));
		}
		return new PlanFacts(visit, felt, gaps, list(in, PlanFactsFormat::evidence));
	}

	/** @throws IOException if they cannot be written */
	public static void write(DataOutput out, PlanFacts facts) throws IOException {
		optional(out, facts.visit(), PlanFactsFormat::visit);
		optional(out, facts.felt(), (to, felt) -> {
			list(to, felt.leaves(), PlanFactsFormat::length);
			list(to, felt.pairs(), (into, pair) -> {
				into.writeByte(pair.first());
				into.writeByte(pair.second());
			});
		});
		out.writeInt(facts.gaps().size());
		for (RimCondition condition : RimCondition.values()) {
			if (facts.gaps().containsKey(condition)) {
				out.writeByte(condition.ordinal());
				list(out, facts.gaps().get(condition), (to, gap) -> {
					to.writeDouble(gap.from());
					to.writeDouble(gap.to());
				});
			}
		}
		list(out, facts.rounds(), PlanFactsFormat::evidence);
	}

	private static Visit visit(DataInput in) throws IOException {
		return new Visit(LocalDate.ofEpochDay(in.readLong()), in.readUTF(), in.readUTF(),
				optional(in, from -> Saliva.get(from.readByte())), in.readInt(), list(in, PlanFactsFormat::pad));
	}

	private static void visit(DataOutput out, Visit visit) throws IOException {
		out.writeLong(visit.date().toEpochDay());
		out.writeUTF(visit.player());
		out.writeUTF(visit.instrument());
		optional(out, visit.saliva(), (to, saliva) -> to.writeByte(saliva.getValue()));
		out.writeInt(visit.torn());
		list(out, visit.pads(), PlanFactsFormat::pad);
	}

	private static PadSeen pad(DataInput in) throws IOException {
		return new PadSeen(in.readUTF(), in.readUTF(), in.readBoolean(), in.readBoolean(),
				optional(in, DataInput::readBoolean), in.readBoolean(), list(in, PlanFactsFormat::gap),
				list(in, PlanFactsFormat::gap));
	}

	private static void pad(DataOutput out, PadSeen pad) throws IOException {
		out.writeUTF(pad.key());
		out.writeUTF(pad.article());
		out.writeBoolean(pad.isNew());
		out.writeBoolean(pad.isTorn());
		optional(out, pad.foundLevel(), DataOutput::writeBoolean);
		out.writeBoolean(pad.leftLevel());
		list(out, pad.found(), PlanFactsFormat::gap);
		list(out, pad.left(), PlanFactsFormat::gap);
	}

	private static FeltGap gap(DataInput in) throws IOException {
		return new FeltGap(new ClockHour(in.readByte()), in.readDouble());
	}

	private static void gap(DataOutput out, FeltGap gap) throws IOException {
		out.writeByte(gap.hour().station());
		out.writeDouble(gap.gap());
	}

	private static Evidence evidence(DataInput in) throws IOException {
		return new Evidence(in.readUTF(), in.readUTF(), in.readUTF(),
				list(in, from -> new CalibrationRound(list(from, PlanFactsFormat::reading),
						list(from, PlanFactsFormat::piece), list(from, PlanFactsFormat::reading))),
				list(in, PlanFactsFormat::phrase));
	}

	private static void evidence(DataOutput out, Evidence evidence) throws IOException {
		out.writeUTF(evidence.article());
		out.writeUTF(evidence.label());
		out.writeUTF(evidence.key());
		list(out, evidence.rounds(), (to, round) -> {
			list(to, round.before(), PlanFactsFormat::reading);
			list(to, round.pieces(), PlanFactsFormat::piece);
			list(to, round.after(), PlanFactsFormat::reading);
		});
		list(out, evidence.obstacles(), PlanFactsFormat::phrase);
	}

	/** Its values are counts, hours and what is said alike in every language. */
	private static Phrase phrase(DataInput in) throws IOException {
		return new Phrase(in.readUTF(), list(in, PlanFactsFormat::value));
	}

	private static void phrase(DataOutput out, Phrase phrase) throws IOException {
		out.writeUTF(phrase.key());
		list(out, phrase.values(), PlanFactsFormat::value);
	}

	private static Object value(DataInput in) throws IOException {
		return switch (in.readByte()) {
		case COUNT -> in.readInt();
		case HOUR -> new ClockHour(in.readByte());
		default -> in.readUTF();
		};
	}

	private static void value(DataOutput out, Object value) throws IOException {
		if (value instanceof Integer count) {
			out.writeByte(COUNT);
			out.writeInt(count);
		} else if (value instanceof ClockHour hour) {
			out.writeByte(HOUR);
			out.writeByte(hour.station());
		} else {
			out.writeByte(SAID);
			out.writeUTF(String.valueOf(value));
		}
	}

	private static RimReading reading(DataInput in) throws IOException {
		return new RimReading(new ClockHour(in.readByte()), length(in), optional(in, PlanFactsFormat::length));
	}

	private static void reading(DataOutput out, RimReading reading) throws IOException {
		out.writeByte(reading.hour().station());
		length(out, reading.atLeast());
		optional(out, reading.atMost(), PlanFactsFormat::length);
	}

	private static PartialShim piece(DataInput in) throws IOException {
		return new PartialShim(new Arc(new ClockHour(in.readByte()), in.readByte()), length(in));
	}

	private static void piece(DataOutput out, PartialShim piece) throws IOException {
		out.writeByte(piece.arc().from().station());
		out.writeByte(piece.arc().halfHours());
		length(out, piece.thickness());
	}

	private static Length length(DataInput in) throws IOException {
		return new Length(in.readLong());
	}

	private static void length(DataOutput out, Length length) throws IOException {
		out.writeLong(length.nanometres());
	}

	private static <T> Optional<T> optional(DataInput in, Reading<T> reading) throws IOException {
		return in.readBoolean() ? Optional.of(reading.read(in)) : Optional.empty();
	}

	private static <T> void optional(DataOutput out, Optional<T> value, Writing<T> writing) throws IOException {
		out.writeBoolean(value.isPresent());
		if (value.isPresent()) {
			writing.write(out, value.get());
		}
	}

	private static <T> List<T> list(DataInput in, Reading<T> reading) throws IOException {
		List<T> list = new ArrayList<>();
		for (int left = count(in); left > 0; left--) {
			list.add(reading.read(in));
		}
		return list;
	}

	private static <T> void list(DataOutput out, Collection<T> list, Writing<T> writing) throws IOException {
		out.writeInt(list.size());
		for (T value : list) {
			writing.write(out, value);
		}
	}

	private static int count(DataInput in) throws IOException {
		int count = in.readInt();
		if (count < 0 || count > MOST) {
			throw new EOFException("spoilt");
		}
		return count;
	}
}
