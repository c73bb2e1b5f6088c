package padwright.language.shop;

import java.nio.file.Path;

import padwright.workup.checks.Severity;

/**
 * A finding at its place in a file.
 *
 * @param line from 1
 * @param column from 1
 */
public record ShopFinding(Path file, int line, int column, Severity severity, String code, String message) {
}
