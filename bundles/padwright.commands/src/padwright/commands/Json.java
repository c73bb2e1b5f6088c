package padwright.commands;

import java.io.PrintWriter;
import java.math.BigDecimal;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Writes results for programs. */
final class Json {

	/** A nanometre is about 0.00004 thou, so that seven decimals give every length back. */
	private static final int EXACT_THOU = 7;
	private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

	private Json() {
	}

	static void print(PrintWriter out, Object value) {
		GSON.toJson(value, out);
		out.println();
		out.flush();
	}

	/** A length in thou, from which the nanometres can be told again. */
	static BigDecimal thou(Length length) {
		return length.in(LengthUnit.THOU, EXACT_THOU);
	}
}
