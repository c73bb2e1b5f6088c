package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

import padwright.language.ide.words.Messages;

import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Fitting;
import padwright.model.plan.KeyService;
import padwright.model.plan.Piece;
import padwright.model.plan.Plan;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.model.stock.FilmSet;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.service.KeyJob;

/** All that is known about an element of a document, in lines of Markdown. */
public final class Facts {

	private Facts() {
	}

	/** About an element in its own document. */
	public static List<String> of(EObject element) {
		if (element instanceof Key || element instanceof KeyChange) {
			return key(element, EcoreUtil2.getContainerOfType(element, KeySystem.class));
		}
		if (element instanceof KeyService) {
			return Rows.around(element).map(Facts::row).orElse(List.of());
		}
		if (element instanceof ThicknessRow) {
			return Rows.around(element).map(HeightFacts::of).orElse(List.of());
		}
		if (element instanceof Round || element instanceof Piece) {
			Round round = EcoreUtil2.getContainerOfType(element, Round.class);
			return Rows.around(round).map(job -> RoundFacts.of(job, round)).orElse(List.of());
		}
		if (element instanceof Fitting fitting) {
			return fitting(fitting);
		}
		if (element instanceof KeySystem system) {
			return List.of(system(system));
		}
		KeySystem around = EcoreUtil2.getContainerOfType(element, KeySystem.class);
		return around == null ? ArticleFacts.of(element) : PartFacts.of(element, around);
	}

	/** About what a name in {@code context} refers to, as it is there. */
	public static List<String> of(EObject target, EObject context) {
		Plan plan = EcoreUtil2.getContainerOfType(context, Plan.class);
		if (target instanceof Key && plan != null) {
			return context instanceof KeyService ? of(context) : key(target, plan.getSystem());
		}
		if (target instanceof FilmSet films && plan != null) {
			return Stream.concat(of(films).stream(),
					Rows.plan(context).map(service -> ArticleFacts.left(films, service)).stream()).toList();
		}
		KeySystem heir = EcoreUtil2.getContainerOfType(context, KeySystem.class);
		if (heir != null && target.eContainer() instanceof KeySystem) {
			return target instanceof Key ? key(target, heir) : PartFacts.of(target, heir);
		}
		return of(target);
	}

	private static List<String> row(KeyJob job) {
		List<String> lines = new ArrayList<>();
		job.key().map(KeyFacts::of).ifPresent(lines::add);
		lines.addAll(HeightFacts.of(job));
		job.lastRound().ifPresent(round -> lines.addAll(RoundFacts.of(job, round)));
		return lines;
	}

	private static List<String> key(EObject element, KeySystem system) {
		Key key = element instanceof KeyChange change ? change.getKey() : (Key) element;
		Optional<EffectiveKey> effective = EffectiveSystem.of(system).key(key);
		return effective.map(KeyFacts::of).stream().toList();
	}

	private static List<String> fitting(Fitting fitting) {
		return Stream.of(fitting.getPad(), fitting.getBacking(), fitting.getFilms(), fitting.getAdhesive())
				.filter(article -> article != null).flatMap(article -> of(article, fitting).stream()).distinct()
				.toList();
	}

	private static String system(KeySystem system) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		String label = system.getLabel() == null ? system.getName() : system.getLabel();
		return Messages.of("system", label, effective.keys().size(), effective.fingerings().size());
	}
}
