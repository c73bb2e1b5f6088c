package padwright.language.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Injector;

import padwright.language.archive.FactStore.Kept;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;

/**
 * Reads plans of one shop, however many: several at once, each let go of when what is wanted of it was taken, and none of
 * which that was taken before while neither it nor a system or stock changed. So an archive takes no more memory than what
 * is wanted, and after a change no more time than for what changed.
 */
public final class PlanReading {

	private final Path top;
	private final Collection<Path> all;
	private final Supplier<Injector> languages;
	private final int threads;

	/**
	 * @param top the folder of the shop
	 * @param all its files, absolute
	 * @param languages makes the services of the language, anew for each thread
	 */
	public PlanReading(Path top, Collection<Path> all, Supplier<Injector> languages, int threads) {
		this.top = top;
		this.all = List.copyOf(all);
		this.languages = languages;
		this.threads = threads;
	}

	/** A file as it is now, with what was taken of it before, or null. */
	private record Seen<T>(FileStamp stamp, String hash, boolean source, Kept<T> kept) {

		static <T> Seen<T> of(Path file, Kept<T> kept) {
			FileStamp stamp = FileStamp.of(file);
			if (kept != null && kept.holds(stamp)) {
				return new Seen<>(stamp, kept.hash(), kept.source(), kept);
			}
			FileText text = FileText.of(file, Map.of());
			String hash = text.hash();
			return new Seen<>(stamp, hash, text.isSource(), kept != null && kept.hash().equals(hash) ? kept : null);
		}

		Kept<T> with(String basis, List<T> facts) {
			return new Kept<>(stamp, hash, source, basis, facts);
		}
	}

	/**
	 * What is wanted of each plan, in the order of the files and the plans in each.
	 *
	 * @param wanted takes it, in several threads; it must keep nothing of the plan's document
	 * @param store of what was taken before, which gets what is taken now
	 * @param unreadable told of files that cannot be used, and why, in their order
	 */
	public <T> List<T> of(Collection<Path> files, Function<Plan, T> wanted, FactStore<T> store,
			BiConsumer<Path, String> unreadable) {
		Map<Path, Seen<T>> seen = new LinkedHashMap<>();
		all.forEach(file -> seen.put(file, Seen.of(file, store.get(path(file)))));
		store.retain(all.stream().map(this::path).collect(Collectors.toSet()));
		List<Path> sources = all.stream().filter(file -> seen.get(file).source()).toList();
		String basis = Fingerprint.of(sources.stream().map(file -> path(file) + seen.get(file).hash()).toList());
		List<Path> due = files.stream().filter(file -> !isKept(seen.get(file), basis)).toList();
		Map<Path, String> faults = new ConcurrentHashMap<>();
		Map<Path, List<T>> taken = taken(due, sources, wanted, faults);
		seen.forEach((file, now) -> {
			if (faults.containsKey(file)) {
				store.forget(path(file));
			} else {
				store.put(path(file), kept(now, basis, taken.get(file)));
			}
		});
		due.stream().filter(faults::containsKey).forEach(file -> unreadable.accept(file, faults.get(file)));
		return files.stream().flatMap(file -> taken.getOrDefault(file, seen.get(file).kept() == null ? List.of()
				: seen.get(file).kept().facts()).stream()).toList();
	}

	/** As it is now, unless nothing was wanted of it. */
	private static <T> Kept<T> kept(Seen<T> now, String basis, List<T> taken) {
		if (taken != null) {
			return now.with(basis, taken);
		}
		return now.kept() == null ? now.with("", List.of()) : now.with(now.kept().basis(), now.kept().facts());
	}

	private static boolean isKept(Seen<?> seen, String basis) {
		return seen.kept() != null && seen.kept().basis().equals(basis);
	}

	private <T> Map<Path, List<T>> taken(List<Path> due, List<Path> sources, Function<Plan, T> wanted,
			Map<Path, String> faults) {
		Map<Path, List<T>> taken = new ConcurrentHashMap<>();
		AtomicInteger next = new AtomicInteger();
		inParallel(Math.min(threads, due.size()), sources, worker -> {
			for (int at = next.getAndIncrement(); at < due.size(); at = next.getAndIncrement()) {
				Path file = due.get(at);
				List<T> plans = new ArrayList<>();
				worker.read(file, FileText.of(file, Map.of()),
						document -> plans(document).forEach(plan -> plans.add(wanted.apply(plan))))
						.ifPresent(fault -> faults.put(file, fault));
				taken.put(file, plans);
			}
		});
		return taken;
	}

	private String path(Path file) {
		return top.relativize(file).toString();
	}

	private static List<Plan> plans(XtextResource document) {
		List<Plan> plans = new ArrayList<>();
		for (EObject root : document.getContents()) {
			if (root instanceof Document whole) {
				plans.addAll(whole.getPlans());
			}
		}
		return plans;
	}

	private void inParallel(int workers, List<Path> sources, Consumer<Worker> work) {
		AtomicReference<Throwable> failure = new AtomicReference<>();
		Thread[] all = new Thread[workers];
		Arrays.setAll(all, each -> new Thread(() -> work.accept(worker(sources)), "padwright-reading-" + each));
		for (Thread thread : all) {
			thread.setDaemon(true);
			thread.setUncaughtExceptionHandler((failed, reason) -> failure.compareAndSet(null, reason));
			thread.start();
		}
		for (Thread thread : all) {
			CheckWorkers.await(thread);
		}
		if (failure.get() != null) {
			throw new IllegalStateException("reading failed: " + failure.get(), failure.get());
		}
	}

	private Worker worker(List<Path> sources) {
		Worker worker = new Worker(languages.get());
		worker.addSources(sources.stream().map(file -> FileState.of(file, path(file), ResultStore.none(), Map.of())).toList(),
				state -> state.text(Map.of()));
		return worker;
	}
}
