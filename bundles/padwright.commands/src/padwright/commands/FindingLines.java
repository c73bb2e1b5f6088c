package padwright.commands;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import padwright.language.shop.ShopFinding;
import padwright.workup.checks.Severity;

/** Findings as they are told: a line each, or for programs. */
final class FindingLines {

	private FindingLines() {
	}

	/** As {@code file:line:column severity code message}. */
	static void print(PrintWriter out, Collection<ShopFinding> findings) {
		for (ShopFinding finding : findings) {
			out.println(ShownPath.of(finding.file()) + ":" + finding.line() + ":" + finding.column() + " "
					+ severity(finding) + " " + finding.code() + " " + oneLine(finding.message()));
		}
	}

	static Map<String, Object> json(ShopFinding finding) {
		Map<String, Object> json = new LinkedHashMap<>();
		json.put("file", ShownPath.of(finding.file()));
		json.put("line", finding.line());
		json.put("column", finding.column());
		json.put("severity", severity(finding));
		json.put("code", finding.code());
		json.put("message", finding.message());
		return json;
	}

	static long count(List<ShopFinding> findings, Severity severity) {
		return findings.stream().map(ShopFinding::severity).filter(severity::equals).count();
	}

	private static String severity(ShopFinding finding) {
		return finding.severity().name().toLowerCase(Locale.ROOT);
	}

	/** Text that a message quotes may hold line ends; a finding stays one line. */
	private static String oneLine(String message) {
		return message.replaceAll("\\s+", " ");
	}
}
