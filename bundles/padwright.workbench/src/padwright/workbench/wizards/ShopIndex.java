package padwright.workbench.wizards;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.ide.server.ILanguageServerAccess.Context;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.impl.ChunkedResourceDescriptions;

import padwright.language.ide.server.LocalServer;
import padwright.language.shop.ShopFolder;
import padwright.language.files.UnreadableException;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;
import padwright.workbench.session.Answers;
import padwright.workbench.session.LanguageSession;

/**
 * What systems, stocks and plans a shop has, unsaved ones too.
 *
 * @param articles of the stocks, by their kind
 */
record ShopIndex(List<Entry> systems, List<Entry> stocks, List<Entry> plans, Map<EClass, List<Article>> articles) {

	/** An article and the stock that has it. */
	record Article(String stock, String name) {
	}

	/** A name and the document that it stands in, as the server knows it. */
	record Entry(String name, String uri) {
	}

	static final ShopIndex EMPTY = new ShopIndex(List.of(), List.of(), List.of(), Map.of());

	/** Asks the server; a question that a change cancelled is asked again. */
	static CompletableFuture<ShopIndex> of(Path shop) {
		return CompletableFuture.supplyAsync(() -> document(shop)).thenCompose(document -> document
				.map(one -> LanguageSession.get().server().thenCompose(server -> ask(server, one, shop)))
				.orElse(CompletableFuture.completedFuture(EMPTY)));
	}

	private static Optional<Path> document(Path shop) {
		try {
			return ShopFolder.documents(shop).stream().findFirst();
		} catch (UnreadableException unreadable) {
			throw new CompletionException(unreadable);
		}
	}

	private static CompletionStage<ShopIndex> ask(LocalServer server, Path document, Path shop) {
		return Answers.retried(() -> server.read(LocalServer.uri(document),
				context -> read(context, LocalServer.uri(shop))));
	}

	private static ShopIndex read(Context context, String shop) {
		ChunkedResourceDescriptions all = ChunkedResourceDescriptions
				.findInEmfObject(context.getResource().getResourceSet());
		return new ShopIndex(entries(all, KeySystemPackage.Literals.KEY_SYSTEM, shop),
				entries(all, StockPackage.Literals.STOCK, shop), entries(all, PlanPackage.Literals.PLAN, shop),
				Stream.of(StockPackage.Literals.PAD, StockPackage.Literals.BACKING, StockPackage.Literals.FILM_SET,
						StockPackage.Literals.ADHESIVE).collect(Collectors.toMap(kind -> kind, kind -> articles(all, kind))));
	}

	private static List<Article> articles(ChunkedResourceDescriptions all, EClass kind) {
		return StreamSupport.stream(all.getExportedObjectsByType(kind).spliterator(), false)
				.map(IEObjectDescription::getName).filter(name -> name.getSegmentCount() == 2)
				.map(name -> new Article(name.getFirstSegment(), name.getLastSegment())).distinct().toList();
	}

	/** The names of a stock's articles of a kind. */
	List<String> articles(Optional<Entry> stock, EClass kind) {
		return articles.getOrDefault(kind, List.of()).stream()
				.filter(article -> stock.filter(one -> one.name().equals(article.stock)).isPresent()).map(Article::name)
				.toList();
	}

	private static List<Entry> entries(ChunkedResourceDescriptions all, EClass type, String shop) {
		List<Entry> entries = new ArrayList<>();
		String folder = shop.endsWith("/") ? shop : shop + "/";
		for (IEObjectDescription one : all.getExportedObjectsByType(type)) {
			String uri = one.getEObjectURI().trimFragment().toString();
			if (uri.startsWith(folder)) {
				entries.add(new Entry(one.getName().toString(), uri));
			}
		}
		entries.sort((left, right) -> left.name().compareToIgnoreCase(right.name()));
		return entries;
	}

	static List<String> names(List<Entry> entries) {
		return entries.stream().map(Entry::name).toList();
	}

	static Optional<Entry> find(List<Entry> entries, String name) {
		return entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
	}
}
