package padwright.language.validation;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.IContainer;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.impl.ResourceDescriptionsProvider;
import org.eclipse.xtext.validation.Check;

import com.google.inject.Inject;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Finding;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.ModelChecks;
import padwright.workup.checks.Place;

/**
 * Judges a document as it is written: by the checks of every model, and by what only a file among the files of a shop
 * can get wrong.
 */
public class PadwrightValidator extends AbstractPadwrightValidator {

	private static final Map<EStructuralFeature, String> KIND_BY_FEATURE = Map.of(
			PlanPackage.Literals.DOCUMENT__SYSTEMS, "keys",
			PlanPackage.Literals.DOCUMENT__STOCKS, "stock",
			PlanPackage.Literals.DOCUMENT__PLANS, "plan");

	@Inject
	private ResourceDescriptionsProvider descriptions;
	@Inject
	private IContainer.Manager containers;
	@Inject
	private IResourceDescription.Manager resourceDescriptions;

	/** No failure is passed over in silence: a check that fails would else look like one that found nothing. */
	@Override
	protected void handleExceptionDuringValidation(Throwable failure) {
		if (failure instanceof Error error) {
			throw error;
		}
		throw failure instanceof RuntimeException unchecked ? unchecked : new IllegalStateException(failure);
	}

	@Override
	protected List<EPackage> getEPackages() {
		return List.of(PlanPackage.eINSTANCE, KeySystemPackage.eINSTANCE, StockPackage.eINSTANCE);
	}

	/** One check that calls all others: several would be carried out in an order that differs with every start. */
	@Check
	public void check(Document document) {
		checkModel(document);
		checkKind(document);
		checkNamesInShop(document);
	}

	private void checkModel(Document document) {
		ModelChecks.check(document, () -> getCancelIndicator().isCanceled()).forEach(this::report);
	}

	private void checkKind(Document document) {
		Findings findings = new Findings();
		String extension = document.eResource().getURI().fileExtension();
		for (EObject element : document.eContents()) {
			String kind = KIND_BY_FEATURE.get(element.eContainmentFeature());
			if (extension != null && KIND_BY_FEATURE.containsValue(extension) && !extension.equals(kind)) {
				findings.warning(IssueCodes.KIND_MISPLACED, Place.of(element, KeySystemPackage.Literals.TITLED__NAME),
						Advice.of(IssueCodes.KIND_MISPLACED, kind, extension));
			}
		}
		findings.all().forEach(this::report);
	}

	private void checkNamesInShop(Document document) {
		Findings findings = new Findings();
		Set<String> here = new HashSet<>();
		for (EObject element : document.eContents()) {
			if (element instanceof Titled titled && titled.getName() != null
					&& (!here.add(titled.eClass().getName() + titled.getName()) || isElsewhere(titled))) {
				findings.error(IssueCodes.DUPLICATE_NAME, Place.of(titled, KeySystemPackage.Literals.TITLED__NAME),
						duplicate(titled.getName()));
			}
		}
		findings.all().forEach(this::report);
	}

	/** What to say of a name that several elements of one kind have. */
	public static Advice duplicate(String name) {
		return Advice.of(IssueCodes.DUPLICATE_NAME, name);
	}

	private boolean isElsewhere(Titled titled) {
		IResourceDescription own = resourceDescriptions.getResourceDescription(titled.eResource());
		var index = descriptions.getResourceDescriptions(titled.eResource());
		var name = QualifiedName.create(titled.getName());
		for (IContainer container : containers.getVisibleContainers(own, index)) {
			for (IEObjectDescription other : container.getExportedObjects(titled.eClass(), name, false)) {
				if (!other.getEObjectURI().trimFragment().equals(own.getURI())) {
					return true;
				}
			}
		}
		return false;
	}

	private void report(Finding finding) {
		Place place = finding.place();
		String[] data = finding.data().toArray(String[]::new);
		switch (finding.severity()) {
		case ERROR -> error(finding.message(), place.element(), place.feature(), place.index(), finding.code(), data);
		case WARNING -> warning(finding.message(), place.element(), place.feature(), place.index(), finding.code(),
				data);
		case INFO -> info(finding.message(), place.element(), place.feature(), place.index(), finding.code(), data);
		}
	}
}
