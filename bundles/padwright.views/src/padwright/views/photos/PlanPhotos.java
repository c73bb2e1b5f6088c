package padwright.views.photos;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Resolved;
import padwright.model.plan.Photograph;
import padwright.workup.job.FileBeside;
import padwright.workup.job.JobRecord;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;

/** The photographs of a plan, in the order of its diary, with the files where they should be. */
public record PlanPhotos(List<Photo> photos, List<Optional<Path>> files) {

	public static final PlanPhotos NONE = new PlanPhotos(List.of(), List.of());

	public PlanPhotos {
		photos = List.copyOf(photos);
		files = List.copyOf(files);
	}

	/** None of them is read yet. */
	public static PlanPhotos of(ServicePlan plan) {
		List<Photo> photos = new ArrayList<>();
		List<Optional<Path>> files = new ArrayList<>();
		for (Photograph taken : JobRecord.of(plan.plan()).all(Photograph.class)) {
			if (taken.getPath() != null) {
				photos.add(new Photo("photo " + photos.size(), taken.getPath(), words(plan, taken), Optional.empty(), ""));
				files.add(FileBeside.of(taken, taken.getPath()));
			}
		}
		return new PlanPhotos(photos, files);
	}

	private static String words(ServicePlan plan, Photograph taken) {
		List<String> words = new ArrayList<>();
		Resolved.of(taken.getKey()).ifPresent(key -> words.add(Labels.ofKey(plan, key.getName())));
		Optional.ofNullable(taken.getText()).ifPresent(words::add);
		Optional.ofNullable(taken.getDate()).ifPresent(day -> words.add(day.toString()));
		return String.join(" · ", words);
	}

	/** The file of a photograph. */
	public Optional<Path> file(String id) {
		return photos.stream().filter(photo -> photo.id().equals(id)).findFirst()
				.flatMap(photo -> files.get(photos.indexOf(photo)));
	}

	/** The same with others in place of its photographs. */
	public PlanPhotos with(List<Photo> read) {
		return new PlanPhotos(read, files);
	}
}
