package padwright.language.shop;

import java.nio.file.Path;
import java.util.Comparator;

import padwright.workup.checks.Severity;

/**
 * A finding at its place in a file.
 *
 * @param line from 1
 * @param column from 1
 */
public record ShopFinding(Path file, int line, int column, Severity severity, String code, String message) {

	/** By file and place; those of one place the gravest first, then by code and message, so that none is left to chance. */
	public static final Comparator<ShopFinding> ORDER = Comparator.comparing(ShopFinding::file)
			.thenComparingInt(ShopFinding::line).thenComparingInt(ShopFinding::column)
			.thenComparing(ShopFinding::severity)
			.thenComparing(ShopFinding::code, Comparator.nullsFirst(Comparator.naturalOrder()))
			.thenComparing(ShopFinding::message);
}
