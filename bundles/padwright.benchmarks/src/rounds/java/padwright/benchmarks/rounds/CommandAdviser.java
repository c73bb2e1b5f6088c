package padwright.benchmarks.rounds;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import padwright.commands.Main;
import padwright.engine.bench.Adviser;
import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Writes what was felt into a plan of one key and asks the command {@code solve --json} what to do. */
final class CommandAdviser implements Adviser {

	/** A rim of 7 mm mean radius without an arm: 12 mm are assumed, as at the simulated bench. */
	private static final String SHOP = """
			system One {
				joint body
				touch R1
				key F open by R1 hole 13 mm rim 1 mm soldered cup 17 mm hinge near on body at 100 mm
			}
			stock Bench {
				material plastic { }
				pad Rigid { base plastic 1 mm thick 2.4 mm diameters 17 mm stiffness 0.1 }
				film Clear plastic { 0.5 1 1.5 2 2.5 3 4 7.5 }
				feeler A 0.5 thou feeler B 1 thou feeler C 1.5 thou feeler D 2 thou feeler E 3 thou feeler G 4 thou
			}
			""";

	private final Path plan;
	private final boolean graded;

	/** @param folder that files are written into */
	CommandAdviser(Path folder, boolean graded) {
		this.plan = folder.resolve("loop.plan");
		this.graded = graded;
		write(folder.resolve("padwright.shop"), "");
		write(folder.resolve("loop.keys"), SHOP);
	}

	@Override
	public Advice advise(List<FeltRound> rounds) {
		write(plan, text(rounds));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		Main.run(List.of("solve", "--json", plan.toString()),
				new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
		JsonObject key = JsonParser.parseString(out.toString(StandardCharsets.UTF_8)).getAsJsonObject()
				.getAsJsonArray("keys").get(0).getAsJsonObject();
		if (!key.has("pieces")) {
			throw new IllegalStateException(key + "\n" + err.toString(StandardCharsets.UTF_8) + "\n" + text(rounds));
		}
		return new Advice(pieces(key, "pieces"), pieces(key, "takeOut"), thou(key.get("stackChange")),
				key.get("heldOff").getAsBoolean(), key.get("chanceNow").getAsDouble(), key.get("chance").getAsDouble(),
				Optional.ofNullable(key.getAsJsonObject("next"))
						.map(next -> ClockHour.ofHour(next.get("hour").getAsBigDecimal())));
	}

	private String text(List<FeltRound> rounds) {
		StringBuilder text = new StringBuilder("plan Loop for One with Bench {\n\tseat within 0.5 thou\n"
				+ "\tfit Rigid with Clear\n\tread at 12 3 6 9" + (graded ? " graded" : "") + "\n\tkey F");
		for (int round = 0; round < rounds.size(); round++) {
			text.append("\n\t\t").append(felt(rounds.get(round)));
			if (round + 1 < rounds.size()) {
				text.append(' ').append(done(rounds.get(round).film(), rounds.get(round + 1).film()));
			}
		}
		return text.append("\n}\n").toString();
	}

	private static String felt(FeltRound round) {
		return "felt at " + round.readings().stream().map(reading -> reading.hour().toString()).collect(Collectors.joining(" "))
				+ " : " + round.readings().stream().map(CommandAdviser::reading).collect(Collectors.joining(" "));
	}

	private static String reading(FeltReading reading) {
		return !reading.drags() ? thou(reading.above()) : reading.above().signum() > 0 ? "-" : ".";
	}

	private static String done(FilmInPlace then, FilmInPlace now) {
		List<PartialShim> out = without(then.pieces(), now.pieces());
		List<PartialShim> placed = without(now.pieces(), then.pieces());
		Length full = now.fullShims().minus(then.fullShims());
		return (full.signum() == 0 ? "" : "full " + (full.signum() > 0 ? "+" : "-") + thou(full.abs()) + " ")
				+ (out.isEmpty() ? "" : "out " + text(out, ", ") + " ")
				+ (placed.isEmpty() ? "shim none" : "shim " + text(placed, ", "));
	}

	private static List<PartialShim> without(List<PartialShim> all, List<PartialShim> some) {
		List<PartialShim> left = new ArrayList<>(all);
		some.forEach(left::remove);
		return left;
	}

	private static String text(List<PartialShim> pieces, String between) {
		return pieces.stream().map(PartialShim::toString).collect(Collectors.joining(between));
	}

	private static List<PartialShim> pieces(JsonObject key, String name) {
		return StreamSupport.stream(key.getAsJsonArray(name).spliterator(), false).map(JsonElement::getAsJsonObject)
				.map(piece -> new PartialShim(new Arc(ClockHour.ofHour(piece.get("from").getAsBigDecimal()),
						(int) Math.round(2 * piece.get("hours").getAsDouble())), thou(piece.get("thou"))))
				.toList();
	}

	private static Length thou(JsonElement figure) {
		return Length.of(figure.getAsBigDecimal(), LengthUnit.THOU);
	}

	private static String thou(Length length) {
		return length.in(LengthUnit.THOU, 4).toPlainString();
	}

	private static void write(Path file, String text) {
		try {
			Files.writeString(file, text);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
