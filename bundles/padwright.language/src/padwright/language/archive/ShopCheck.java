package padwright.language.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Injector;

import padwright.language.archive.SourceGraph.Source;
import padwright.language.shop.ShopFinding;

/**
 * Checks files of one shop, however many: several at once, each let go of when it is judged, and none that was judged
 * before and depends on nothing that changed. The findings are those of {@link padwright.language.shop.Shop}. May be
 * run again and again; for one thread at a time.
 */
public final class ShopCheck {

	private final Map<Path, String> all = new TreeMap<>();
	private final Map<Path, String> otherTexts;
	private final Supplier<Injector> languages;
	private final int threads;
	private CheckWorkers team;

	/**
	 * @param top the folder of the shop
	 * @param all its files, absolute
	 * @param otherTexts what some files hold, instead of what is on disk
	 * @param languages makes the services of the language, anew for each thread
	 */
	public ShopCheck(Path top, Collection<Path> all, Map<Path, String> otherTexts, Supplier<Injector> languages,
			int threads) {
		all.forEach(file -> this.all.put(file, top.relativize(file).toString()));
		this.otherTexts = Map.copyOf(otherTexts);
		this.languages = languages;
		this.threads = threads;
	}

	/**
	 * All findings in the chosen files, in the order of the files and their lines.
	 *
	 * @param store of former results, which gets the new ones
	 * @param progress is told each file that is judged, by several threads
	 * @param cancelled ends the check; the findings are those so far
	 */
	public List<ShopFinding> run(Collection<Path> chosen, ResultStore store, Consumer<Path> progress,
			CancelIndicator cancelled) {
		Map<Path, FileState> states = new LinkedHashMap<>();
		all.forEach((file, path) -> states.put(file, FileState.of(file, path, store, otherTexts)));
		store.retain(states.values().stream().map(FileState::path).collect(Collectors.toSet()));
		team = teamFor(states.values().stream().filter(FileState::source).toList());
		SourceGraph graph = graph(states.values(), team);
		List<FileState> due = chosen.stream().map(states::get).filter(state -> !state.isJudged(graph)).toList();
		for (FileState state : team.check(due, graph, progress, cancelled)) {
			states.put(state.file(), state);
			if (state.stamp() != null) {
				store.put(state.path(), state.known());
			}
		}
		List<FileState> judged = chosen.stream().map(states::get).filter(state -> state.isJudged(graph)).toList();
		Duplicates duplicates = Duplicates.among(judged, states.values(), team, otherTexts);
		List<ShopFinding> findings = new ArrayList<>();
		judged.forEach(state -> findings.addAll(duplicates.withThem(state)));
		return findings;
	}

	/** Who has all sources loaded already goes on with them. */
	private CheckWorkers teamFor(List<FileState> sources) {
		return team != null && team.hasLoaded(sources) ? team : new CheckWorkers(languages, threads, sources, otherTexts);
	}

	private static SourceGraph graph(Collection<FileState> states, CheckWorkers team) {
		Map<String, Source> sources = new HashMap<>();
		for (FileState state : states) {
			if (state.source()) {
				FileResult given = state.known() == null ? team.describe(state) : state.known().result();
				sources.put(state.path(), new Source(state.hash(), given.names(), given.uses()));
			}
		}
		return new SourceGraph(sources);
	}
}
