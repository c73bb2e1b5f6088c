package padwright.model.stocks;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.stock.Pad;
import padwright.model.stock.PadKind;

/** What is known of a pad: what it says itself, else what holds for its kind. */
public final class PadFigures {

	private PadFigures() {
	}

	/** How far the rim sinks into the face. */
	public static Optional<Length> sinks(Pad pad) {
		return Lengths.of(pad.getSinks(), pad).or(() -> ofKind(pad, kind -> Lengths.of(kind.getSinks(), kind)));
	}

	/** Lambda, 0 to 1 where the stock is right. */
	public static Optional<BigDecimal> stiffness(Pad pad) {
		return Optional.ofNullable(pad.getStiffness())
				.or(() -> ofKind(pad, kind -> Optional.ofNullable(kind.getStiffness())));
	}

	/** Whether it must not be laid in a cup without a backing. */
	public static boolean needsBacking(Pad pad) {
		return pad.isNeedsBacking()
				|| ofKind(pad, kind -> Optional.of(kind.isNeedsBacking())).orElse(false);
	}

	private static <T> Optional<T> ofKind(Pad pad, Function<PadKind, Optional<T>> figure) {
		return Resolved.of(pad.getKind()).flatMap(figure);
	}
}
