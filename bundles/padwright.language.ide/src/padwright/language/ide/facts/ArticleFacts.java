package padwright.language.ide.facts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.film.FilmSupply;
import padwright.language.ide.words.Messages;
import padwright.model.Resolved;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Adhesive;
import padwright.model.stock.Feeler;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FilmStore;
import padwright.workup.words.LengthWords;
import padwright.workup.words.ShownUnit;
import padwright.workup.words.Texts;

/** What the stock says about an article or a material, in words. */
public final class ArticleFacts {

	private ArticleFacts() {
	}

	/** What is to be known about it, and the cautions of what it is made of; empty for what is no article. */
	public static List<String> of(EObject article) {
		if (article instanceof Pad pad) {
			return concat(pad(pad), pad.getLayers().stream().map(layer -> layer.getMaterial()));
		}
		if (article instanceof Backing disc) {
			return concat(List.of(title(disc) + measure(disc.getThickness())), Stream.of(disc.getMaterial()));
		}
		if (article instanceof FilmSet films) {
			return concat(List.of(title(films) + ": " + supply(FilmStore.of(films))), Stream.of(films.getMaterial()));
		}
		if (article instanceof Feeler feeler) {
			return List.of(title(feeler) + measure(feeler.getThickness()));
		}
		if (article instanceof Adhesive adhesive) {
			return Stream.concat(Stream.of(adhesive(adhesive)), Hazards.of(adhesive).stream()).toList();
		}
		return article instanceof Material material
				? Stream.concat(Stream.of(material(material)), Hazards.of(material).stream()).toList() : List.of();
	}

	/** What a plan has left of a film set. */
	public static String left(FilmSet films, ServicePlan plan) {
		return Messages.of("article.left", supply(FilmStore.leftBy(plan, films)));
	}

	private static String supply(FilmStore store) {
		return store.supply().stream().map(film -> LengthWords.figure(film.thickness()) + count(film))
				.collect(Collectors.joining(", ")) + " " + ShownUnit.symbol();
	}

	/** How many blanks there are, as in {@code × 12}; nothing where they are not counted. */
	public static String count(FilmSupply film) {
		return film.pieces() == FilmSupply.UNLIMITED ? "" : " × " + film.pieces();
	}

	private static List<String> pad(Pad pad) {
		List<String> parts = new ArrayList<>();
		parts.add(title(pad) + measure(pad.getThickness())
				+ Optional.ofNullable(pad.getTolerance()).map(off -> " ± " + off).orElse(""));
		number("article.sinks", pad.getSinks(), parts);
		number("article.stiffness", pad.getStiffness(), parts);
		if (pad.isNeedsBacking()) {
			parts.add(Messages.of("article.needsBacking"));
		}
		return List.of(String.join(", ", parts));
	}

	private static String adhesive(Adhesive adhesive) {
		List<String> parts = new ArrayList<>(List.of(title(adhesive)));
		if (adhesive.getSoftens() != null) {
			parts.add(Messages.of("article.softens", adhesive.getSoftens()));
		}
		number("article.fills", adhesive.getFills(), parts);
		return String.join(", ", parts);
	}

	private static String material(Material material) {
		List<String> parts = new ArrayList<>(List.of(title(material)));
		if (material.getExpands() != null) {
			parts.add(Messages.of("article.expands", material.getExpands()));
		}
		if (material.getSwells() != null) {
			parts.add(Messages.of("article.swells", material.getSwells()));
		}
		if (material.getLasts() != null) {
			parts.add(Messages.of("article.lasts", material.getLasts().toPlainString(), material.getLasts()));
		}
		return String.join(", ", parts);
	}

	private static void number(String key, Object number, List<String> parts) {
		if (number != null) {
			parts.add(Messages.of(key, number instanceof BigDecimal decimal ? Texts.decimal(decimal.toPlainString()) : number));
		}
	}

	private static String title(Titled titled) {
		return titled.getLabel() == null ? String.valueOf(titled.getName()) : titled.getLabel();
	}

	private static String measure(Object thickness) {
		return thickness == null ? "" : ", " + thickness;
	}

	private static List<String> concat(List<String> own, Stream<Material> materials) {
		return Stream.concat(own.stream(), materials.flatMap(material -> Resolved.of(material).stream())
				.flatMap(material -> Hazards.of(material).stream().map(caution -> material.getName() + ": " + caution)))
				.distinct().toList();
	}
}
