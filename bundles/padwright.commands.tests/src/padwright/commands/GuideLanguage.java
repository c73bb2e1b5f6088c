package padwright.commands;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A language of the guide, with the words that stand around its pages. */
enum GuideLanguage {

	ENGLISH("en", "", "de/", "English", "All pages", "Pages", "Search", "Nothing found."),
	GERMAN("de", "de/", "../", "Deutsch", "Alle Seiten", "Seiten", "Suchen", "Nichts gefunden.");

	final String code;
	final String label;
	final String allPages;
	final String pages;
	final String search;
	final String nothing;
	private final String inside;
	private final String toOther;

	GuideLanguage(String code, String inside, String toOther, String label, String allPages, String pages, String search,
			String nothing) {
		this.code = code;
		this.inside = inside;
		this.toOther = toOther;
		this.label = label;
		this.allPages = allPages;
		this.pages = pages;
		this.search = search;
		this.nothing = nothing;
	}

	GuideLanguage other() {
		return this == ENGLISH ? GERMAN : ENGLISH;
	}

	/** Where its pages are. */
	Path folder() {
		return GuidePages.FOLDER.resolve(inside);
	}

	/** From a page to the folder that both languages share. */
	String toShared() {
		return this == ENGLISH ? "" : "../";
	}

	/** From a page to the same in the other language. */
	String otherPage(String page) {
		return toOther + page;
	}

	List<Path> files() {
		try (Stream<Path> files = Files.list(folder())) {
			return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
		} catch (IOException missing) {
			throw new UncheckedIOException(missing);
		}
	}
}
