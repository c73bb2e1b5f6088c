package padwright.language.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.resource.impl.ResourceDescriptionsData;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.IResourceValidator;

import com.google.inject.Injector;

import padwright.language.shop.ResourceFindings;
import padwright.language.shop.ShopFinding;
import padwright.workup.checks.IssueCodes;

/**
 * Judges files one after the other, with all files loaded that they may have links to. Only these stay in memory. For
 * one thread, with services of its own.
 */
final class Worker {

	/** Of a file that is only read. */
	private static final FileResult NOTHING = new FileResult(List.of(), List.of(), List.of(), List.of(), false);

	private final Injector language;
	private final IResourceValidator validator;
	private final IResourceDescription.Manager descriptions;
	private final XtextResourceSet resources;
	private final ArchiveReader desk;
	private final Map<Path, XtextResource> sources = new HashMap<>();
	private final Map<Resource, String> paths = new HashMap<>();

	Worker(Injector language) {
		this.language = language;
		validator = language.getInstance(IResourceValidator.class);
		descriptions = language.getInstance(IResourceDescription.Manager.class);
		resources = language.getInstance(XtextResourceSet.class);
		desk = new ArchiveReader(language, resources);
	}

	/** Keeps files loaded for others, in order; those that cannot be used are left out. */
	void addSources(Collection<FileState> files, Function<FileState, FileText> texts) {
		for (FileState file : files) {
			FileText text = texts.apply(file);
			XtextResource resource = text.isReadable() ? load(file.file(), text.text()) : null;
			if (resource != null) {
				sources.put(file.file(), resource);
				paths.put(resource, file.path());
			}
		}
		ResourceDescriptionsData.ResourceSetAdapter.installResourceDescriptionsData(resources,
				new ResourceDescriptionsData(files.stream().map(file -> sources.get(file.file()))
						.filter(Objects::nonNull).map(descriptions::getResourceDescription).toList()));
	}

	/** What a file gives to others, without judging it. */
	FileResult describe(Path file, FileText text) {
		return look(file, text, resource -> result(resource, List.of()));
	}

	/** Judges a file. */
	FileResult check(Path file, FileText text, CancelIndicator cancelled) {
		return look(file, text,
				resource -> result(resource, ResourceFindings.of(validator, file, resource, cancelled)));
	}

	/** Shows a file to whoever reads it; tells why that cannot be done, where it cannot. */
	Optional<String> read(Path file, FileText text, Consumer<XtextResource> reader) {
		if (!text.isReadable()) {
			return Optional.of(text.unreadable());
		}
		boolean[] wasShown = new boolean[1];
		look(file, text, resource -> {
			reader.accept(resource);
			wasShown[0] = true;
			return NOTHING;
		});
		return wasShown[0] ? Optional.empty() : Optional.of(ResourceFindings.tooDeep());
	}

	private FileResult look(Path file, FileText text, Function<XtextResource, FileResult> use) {
		if (!text.isReadable()) {
			return unusable(file, text.unreadable());
		}
		XtextResource source = sources.get(file);
		if (source != null) {
			return use.apply(source);
		}
		try {
			return desk.look(file, text.text(), use);
		} catch (StackOverflowError tooDeep) {
			return unusable(file, ResourceFindings.tooDeep());
		}
	}

	private static FileResult unusable(Path file, String why) {
		return new FileResult(List.of(ResourceFindings.unreadable(file, why)), List.of(), List.of(), List.of(), false);
	}

	private XtextResource load(Path file, String text) {
		XtextResource resource = language.getInstance(XtextResource.class);
		resource.setURI(URI.createFileURI(file.toString()));
		resources.getResources().add(resource);
		try {
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			return resource;
		} catch (IOException | StackOverflowError tooDeep) {
			resources.getResources().remove(resource);
			return null;
		}
	}

	private FileResult result(XtextResource resource, List<ShopFinding> findings) {
		return new FileResult(findings, GivenNames.plans(resource),
				GivenNames.shared(descriptions.getResourceDescription(resource)), List.copyOf(links(resource)),
				findings.stream().anyMatch(finding -> finding.code().equals(IssueCodes.LINK)));
	}

	private Set<String> links(XtextResource resource) {
		Set<String> links = new TreeSet<>();
		resource.getAllContents().forEachRemaining(element -> {
			for (EObject target : element.eCrossReferences()) {
				Resource home = target.eResource();
				if (home != resource && paths.containsKey(home)) {
					links.add(paths.get(home));
				}
			}
		});
		return links;
	}
}
