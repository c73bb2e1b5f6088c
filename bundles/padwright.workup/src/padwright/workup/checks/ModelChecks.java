package padwright.workup.checks;

import java.util.List;
import java.util.ServiceLoader;
import java.util.function.BooleanSupplier;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;

import padwright.model.plan.Plan;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.service.ServicePlan;

/** Judges a model by every check there is, whether it came from text or was built in code. */
public final class ModelChecks {

	private static final List<Check<?>> OWN = ServiceLoader.load(Check.class, ModelChecks.class.getClassLoader()).stream()
			.<Check<?>>map(ServiceLoader.Provider::get).toList();
	private static final List<Added<Check<?>>> ADDED = Extensions.installed().of(Check.class).stream()
			.map(added -> new Added<Check<?>>(added.jar(), added.thing())).toList();

	/** Most checks are for one kind of thing, and there are many things. */
	private static final ClassValue<List<Check<?>>> BY_KIND = new ClassValue<>() {
		@Override
		protected List<Check<?>> computeValue(Class<?> kind) {
			return OWN.stream().filter(check -> check.isFor(kind)).toList();
		}
	};

	private ModelChecks() {
	}

	/** All findings on {@code root} and what it contains, in document order. */
	public static List<Finding> check(EObject root) {
		return check(root, () -> false);
	}

	/** As {@link #check(EObject)}, but stops with what it has when {@code cancelled} says so. */
	public static List<Finding> check(EObject root, BooleanSupplier cancelled) {
		Findings findings = new Findings();
		check(root, findings);
		TreeIterator<EObject> contents = root.eAllContents();
		while (contents.hasNext() && !cancelled.getAsBoolean()) {
			check(contents.next(), findings);
		}
		return findings.all();
	}

	private static void check(EObject element, Findings findings) {
		judge(element, findings);
		if (element instanceof Plan plan) {
			ServicePlan service = new ServicePlan(plan);
			judge(service, findings);
			service.jobs().forEach(job -> judge(job, findings));
		}
	}

	private static void judge(Object thing, Findings findings) {
		for (Check<?> check : BY_KIND.get(thing.getClass())) {
			check.checkSubject(thing, findings);
		}
		for (Added<Check<?>> added : ADDED) {
			if (added.thing().isFor(thing.getClass())) {
				Extensions.installed().use(added, () -> added.thing().checkSubject(thing, findings));
			}
		}
	}
}
