package padwright.language.ide.index;

import java.util.Collection;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.IResourceDescriptions;
import org.eclipse.xtext.resource.impl.DefaultResourceDescriptionManager;

import com.google.inject.Singleton;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.stock.StockPackage;

/**
 * Which documents have to be judged anew after others changed: those that name something changed, directly or through
 * the systems that their system extends and the stocks whose rules hold in their stock, and those that give something
 * of the same name.
 */
@Singleton
public final class AffectedDocuments extends DefaultResourceDescriptionManager {

	@Override
	public boolean isAffected(Collection<IResourceDescription.Delta> deltas, IResourceDescription candidate,
			IResourceDescriptions shop) {
		Set<QualifiedName> changed = new HashSet<>();
		deltas.stream().filter(delta -> hasChanges(delta, candidate))
				.flatMap(delta -> Stream.of(delta.getOld(), delta.getNew())).filter(Objects::nonNull)
				.flatMap(AffectedDocuments::given).forEach(changed::add);
		return !changed.isEmpty() && (given(candidate).anyMatch(changed::contains)
				|| names(candidate, changed, shop, new HashSet<>()));
	}

	private static Stream<QualifiedName> given(IResourceDescription document) {
		return StreamSupport.stream(document.getExportedObjects().spliterator(), false)
				.map(IEObjectDescription::getName).map(QualifiedName::toLowerCase);
	}

	private static boolean names(IResourceDescription document, Set<QualifiedName> changed,
			IResourceDescriptions shop, Set<URI> seen) {
		if (document == null || !seen.add(document.getURI())) {
			return false;
		}
		for (QualifiedName name : document.getImportedNames()) {
			if (changed.contains(name.toLowerCase())) {
				return true;
			}
		}
		return StreamSupport.stream(document.getImportedNames().spliterator(), false)
				.anyMatch(name -> sources(name, shop)
						.anyMatch(source -> names(shop.getResourceDescription(source), changed, shop, seen)));
	}

	private static Stream<URI> sources(QualifiedName name, IResourceDescriptions shop) {
		return Stream.of(KeySystemPackage.Literals.KEY_SYSTEM, StockPackage.Literals.STOCK)
				.flatMap(type -> StreamSupport.stream(shop.getExportedObjects(type, name, true).spliterator(), false))
				.map(source -> source.getEObjectURI().trimFragment());
	}
}
