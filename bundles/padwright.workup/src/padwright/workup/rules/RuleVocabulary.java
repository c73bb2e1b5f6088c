package padwright.workup.rules;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;

import padwright.model.keysystem.Titled;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;

/** What can be said in a rule, for those who help to write one. */
public final class RuleVocabulary {

	private static final Map<String, EClass> ARTICLES = Map.of(
			"pad", StockPackage.Literals.PAD,
			"backing", StockPackage.Literals.BACKING,
			"shim", StockPackage.Literals.FILM_SET,
			"glue", StockPackage.Literals.ADHESIVE);

	private RuleVocabulary() {
	}

	/** All properties, dotted, as in {@code shim.material}. */
	public static List<String> properties() {
		return RuleProperties.all().stream().map(RuleProperty::name).toList();
	}

	/** The names that a property can have in a stock; empty for a quantity, and where any name may be meant. */
	public static Collection<String> values(String property, Stock stock) {
		EClass articles = ARTICLES.get(property);
		return articles == null ? own(property, stock)
				: stock.eContents().stream().filter(articles::isInstance).map(article -> ((Titled) article).getName())
						.toList();
	}

	/** Those of {@link #values} that no other stock can add to. */
	static List<String> own(String property, Stock stock) {
		if (type(property).filter(PropertyType.MATERIAL::equals).isPresent()) {
			return stock.getMaterials().stream().map(Titled::getName).toList();
		}
		return property.equals(RuleProperty.PAD_KIND) ? PadKinds.of(stock).stream().map(Titled::getName).toList()
				: RuleProperties.byName(property).map(RuleProperty::names).orElse(List.of());
	}

	/** The units of a quantity, one of which stands behind its number; empty for a bare number and for a name. */
	public static List<String> units(String property) {
		return type(property).map(PropertyType::units).orElse(List.of());
	}

	/** Whether a property is compared with a number. */
	public static boolean isQuantity(String property) {
		return type(property).filter(type -> !type.isNamed()).isPresent();
	}

	/** Whether a property tells the name of such an article or material. */
	public static boolean names(String property, Titled element) {
		if (element.eClass() == StockPackage.Literals.PAD_KIND) {
			return property.equals(RuleProperty.PAD_KIND);
		}
		return element.eClass() == StockPackage.Literals.MATERIAL
				? type(property).filter(PropertyType.MATERIAL::equals).isPresent()
				: element.eClass() == ARTICLES.get(property);
	}

	private static Optional<PropertyType> type(String property) {
		return RuleProperties.byName(property).map(RuleProperty::type);
	}
}
