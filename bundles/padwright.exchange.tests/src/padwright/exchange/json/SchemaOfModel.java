package padwright.exchange.json;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import padwright.engine.length.LengthUnit;
import padwright.exchange.tree.Features;
import padwright.model.plan.PlanPackage;

/** The schema that follows from the model and the grammar, to hold the published one to. */
final class SchemaOfModel {

	/** Tests run in the folder of their own bundle. */
	private static final Path MODEL = Path.of("..", "padwright.model", "model");
	private static final String DECIMAL = "[0-9]+(\\.[0-9]+)?";
	private static final Map<String, String> FORMS = new HashMap<>();

	static {
		FORMS.put("Measure", "^" + DECIMAL + "( (" + String.join("|", LengthUnit.symbols()) + "))?$");
		FORMS.put("LengthUnit", "^(" + String.join("|", LengthUnit.symbols()) + ")$");
		FORMS.put("ClockHour", "^(1[012]|[1-9])(\\.[05])?$");
		FORMS.put("Range", "^" + DECIMAL + "(\\.\\." + DECIMAL + ")?$");
		FORMS.put("Date", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
		FORMS.put("FeelerReading", "^(\\.|" + DECIMAL + ")$");
		FORMS.put("EBigDecimal", "^-?" + DECIMAL + "$");
	}

	private final ResourceSet documented = new ResourceSetImpl();
	private final RequiredFeatures required;

	private SchemaOfModel(RequiredFeatures required) {
		this.required = required;
		documented.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
	}

	static String text(RequiredFeatures required) {
		return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create()
				.toJson(new SchemaOfModel(required).schema()) + "\n";
	}

	private JsonObject schema() {
		JsonObject schema = new JsonObject();
		schema.addProperty("$schema", "https://json-schema.org/draft/2020-12/schema");
		schema.addProperty("$id", "urn:padwright:exchange:2");
		schema.addProperty("title", "A Padwright document");
		schema.addProperty("description", "Key systems, stocks and service plans of flutes. Lengths and other decimals are"
				+ " texts, so that they stay exact; a number without a unit takes the document's. Links are names.");
		schema.addProperty("$ref", "#/$defs/Document");
		JsonObject definitions = new JsonObject();
		for (EPackage each : Features.PACKAGES) {
			each.getEClassifiers().forEach(type -> define(type, definitions));
		}
		schema.add("$defs", definitions);
		return schema;
	}

	private void define(EClassifier type, JsonObject definitions) {
		if (type instanceof EDataType value) {
			definitions.add(type.getName(), value(value));
		} else if (!((EClass) type).isAbstract()) {
			definitions.add(type.getName(), object((EClass) type));
		} else if (stands((EClass) type)) {
			definitions.add(type.getName(), choice((EClass) type));
		}
	}

	/** Whether parts of such a type stand anywhere. */
	private static boolean stands(EClass type) {
		return Features.PACKAGES.stream().flatMap(each -> each.getEClassifiers().stream()).filter(EClass.class::isInstance)
				.flatMap(each -> Features.of((EClass) each).stream())
				.anyMatch(feature -> Features.isPart(feature) && feature.getEType() == type);
	}

	private JsonObject choice(EClass type) {
		JsonObject json = described(type);
		JsonArray kinds = new JsonArray();
		Features.kinds(type).forEach(kind -> kinds.add(reference(kind.getName())));
		json.add("oneOf", kinds);
		return json;
	}

	private JsonObject object(EClass type) {
		JsonObject json = described(type);
		json.addProperty("type", "object");
		JsonObject properties = new JsonObject();
		JsonArray needed = new JsonArray();
		if (type == PlanPackage.Literals.DOCUMENT) {
			properties.add(JsonExchange.FORM, constant(JsonExchange.THIS_FORM));
			needed.add(JsonExchange.FORM);
		}
		if (type.getEAllSuperTypes().stream().anyMatch(SchemaOfModel::stands)) {
			properties.add(Features.KIND, constant(type.getName()));
			needed.add(Features.KIND);
		}
		Set<String> said = required.of(type);
		for (EStructuralFeature feature : Features.of(type)) {
			properties.add(feature.getName(), property(feature));
			if (said.contains(feature.getName())) {
				needed.add(feature.getName());
			}
		}
		json.add("properties", properties);
		if (!needed.isEmpty()) {
			json.add("required", needed);
		}
		json.addProperty("additionalProperties", false);
		return json;
	}

	private static JsonObject constant(String value) {
		JsonObject json = new JsonObject();
		json.addProperty("const", value);
		return json;
	}

	private static JsonObject reference(String definition) {
		JsonObject json = new JsonObject();
		json.addProperty("$ref", "#/$defs/" + definition);
		return json;
	}

	private JsonObject property(EStructuralFeature feature) {
		JsonObject json = described(feature);
		JsonObject one = Features.isLink(feature) ? link(feature) : typed(feature);
		if (feature.isMany()) {
			json.addProperty("type", "array");
			json.addProperty("minItems", 1);
			json.add("items", one);
		} else {
			one.entrySet().forEach(entry -> json.add(entry.getKey(), entry.getValue()));
		}
		return json;
	}

	private static JsonObject link(EStructuralFeature feature) {
		JsonObject json = plain("string");
		json.addProperty("$comment", "the name of a " + feature.getEType().getName());
		return json;
	}

	private static JsonObject typed(EStructuralFeature feature) {
		EClassifier type = feature.getEType();
		if (type == EcorePackage.Literals.EBIG_DECIMAL) {
			JsonObject decimal = plain("string");
			decimal.addProperty("pattern", FORMS.get(type.getName()));
			return decimal;
		}
		if (type == EcorePackage.Literals.EINT) {
			return plain("integer");
		}
		if (type == EcorePackage.Literals.EBOOLEAN) {
			return plain("boolean");
		}
		return type == EcorePackage.Literals.ESTRING ? plain("string") : reference(type.getName());
	}

	private static JsonObject plain(String type) {
		JsonObject json = new JsonObject();
		json.addProperty("type", type);
		return json;
	}

	private JsonObject value(EDataType type) {
		JsonObject json = described(type);
		if (type instanceof EEnum choice) {
			JsonArray literals = new JsonArray();
			choice.getELiterals().forEach(literal -> literals.add(literal.getLiteral()));
			json.add("enum", literals);
		} else {
			json.addProperty("type", "string");
			json.addProperty("pattern", FORMS.get(type.getName()));
		}
		return json;
	}

	private JsonObject described(EModelElement element) {
		JsonObject json = new JsonObject();
		documentation(element).ifPresent(words -> json.addProperty("description", words));
		return json;
	}

	/** From the model as it is written: what is generated from it is without comments. */
	private Optional<String> documentation(EModelElement element) {
		URI file = URI.createFileURI(MODEL.resolve(root(element).getName() + ".ecore").toAbsolutePath().toString());
		EModelElement written = (EModelElement) documented.getResource(file, true)
				.getEObject(EcoreUtil.getURI(element).fragment());
		return Optional.ofNullable(EcoreUtil.getDocumentation(written));
	}

	private static EPackage root(EModelElement element) {
		return (EPackage) EcoreUtil.getRootContainer(element);
	}
}
