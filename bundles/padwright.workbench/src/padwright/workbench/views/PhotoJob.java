package padwright.workbench.views;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

import padwright.drawing.java2d.PictureFile;
import padwright.drawing.scene.PictureData;
import padwright.views.canvas.Photos;
import padwright.views.photos.Photo;
import padwright.views.photos.PlanPhotos;
import padwright.workbench.Messages;

/** Reads photographs in the background; each once, until its file is another. Only the newest wish counts. */
final class PhotoJob extends Job {

	private static final int MOST_PIXELS = 320;

	private record Read(Path file, FileTime changed) {
	}

	private final Photos view;
	private final Map<Read, PictureData> pictures = new HashMap<>();
	private volatile PlanPhotos wished = PlanPhotos.NONE;

	PhotoJob(Photos view) {
		super(Messages.get("photos.reading"));
		this.view = view;
		setSystem(true);
	}

	void start(PlanPhotos photos) {
		wished = photos;
		schedule();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		PlanPhotos reading = wished;
		List<Photo> read = new ArrayList<>();
		for (Photo photo : reading.photos()) {
			read.add(read(photo, reading.file(photo.id())));
		}
		if (reading == wished) {
			view.getDisplay().asyncExec(() -> {
				if (!view.isDisposed()) {
					view.show(reading.with(read));
				}
			});
		}
		return Status.OK_STATUS;
	}

	private Photo read(Photo photo, Optional<Path> file) {
		if (file.filter(Files::isRegularFile).isEmpty()) {
			return photo.without(Messages.get("photos.missing", photo.path()));
		}
		try {
			Read key = new Read(file.get(), Files.getLastModifiedTime(file.get()));
			PictureData known = pictures.get(key);
			if (known == null) {
				known = PictureFile.thumbnail(file.get(), MOST_PIXELS);
				pictures.put(key, known);
			}
			return photo.with(known);
		} catch (IOException unread) {
			return photo.without(Messages.get("photos.unread", photo.path()));
		}
	}
}
