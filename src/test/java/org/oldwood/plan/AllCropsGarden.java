package org.oldwood.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Documents;

/**
 * A garden with a bed for each crop and form, an old plant, a lot of cuttings and a plant raised from it in each, and
 * every entry that a rule's window hangs on.
 */
public final class AllCropsGarden {
    private static final String GARDEN = "{\"format\": 1, \"name\": \"All crops\", \"id\": \"3f2c9a34-7d0e-4a3e-9d7a-0c9a51d4e6b2\","
            + " \"site\": {\"latitude\": %d, \"longitude\": 0, \"zone\": \"UTC\"}, \"beds\": [%s]}";
    private static final List<String> ENTRIES = List.of(
            "\"entry\": \"planted\", \"plant\": \"ID-1\", \"crop\": \"CROP\", \"bed\": \"ID\", \"form\": \"FORM\", \"lengthM\": 3",
            "\"entry\": \"limed\", \"bed\": \"ID\", \"material\": \"ground-limestone\", \"grams\": 400",
            "\"entry\": \"acidified\", \"bed\": \"ID\", \"material\": \"sulphur\", \"grams\": 100",
            "\"entry\": \"moisture\", \"bed\": \"ID\", \"feel\": \"moist\"",
            "\"entry\": \"struck\", \"lot\": \"ID-lot\", \"parent\": \"ID-1\", \"method\": \"hardwood\", \"number\": 9, \"bed\": \"ID\"",
            "\"entry\": \"lifted\", \"lot\": \"ID-lot\", \"rooted\": 7",
            "\"entry\": \"planted-out\", \"lot\": \"ID-lot\", \"bed\": \"ID\", \"plants\": [\"ID-2\"], \"form\": \"FORM\"");

    private AllCropsGarden() {}

    public static GardenFolder at(Path folder, int latitude, String date) throws IOException {
        Path path = Files.createDirectories(folder.resolve("at" + latitude));
        List<String> beds = new ArrayList<>();
        List<String> journal = new ArrayList<>();
        Crops crops = new Crops(Documents.bundled());
        for (Crop crop : crops.ids().stream().map(crops::get).toList()) {
            for (String form : crop.forms()) {
                String id = crop.id() + "-" + form;
                beds.add("{\"id\": \"" + id + "\", \"areaM2\": 4}");
                for (String entry : ENTRIES) {
                    String said = entry.replace("ID", id).replace("CROP", crop.id()).replace("FORM", form);
                    journal.add("{\"id\": \"e-%d\", \"date\": \"%s\", %s}".formatted(journal.size(), date, said));
                }
            }
        }
        Files.writeString(path.resolve("garden.json"), GARDEN.formatted(latitude, String.join(", ", beds)));
        Files.writeString(path.resolve("journal.jsonl"), String.join("\n", journal) + "\n");
        return GardenFolder.open(path);
    }
}
