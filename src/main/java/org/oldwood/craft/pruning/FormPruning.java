package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;

/**
 * How a crop is pruned in one form.
 *
 * @param form {@code stool}, {@code leg}, {@code cordon}, {@code cane-row}, {@code trained}
 * @param craft {@code renewal}, {@code spur} or {@code canes}
 * @param schools the published ways, the default first
 * @param newShoots new stems from the base in a year; on a metre for rows
 * @param regrowth how new shoots go with the cut; empty where as many come every year
 */
public record FormPruning(String form, String craft, List<School> schools, String why, List<Step> steps,
        Optional<Figure> newShoots, Optional<Regrowth> regrowth, Optional<Labour> labour) implements Checked {

    private static final List<String> CRAFTS = List.of("renewal", "spur", "canes");

    static FormPruning read(String form, Fields fields) {
        String craft = fields.oneOf("craft", CRAFTS);
        Class<? extends School> kind = craft.equals("spur") ? SpurSchool.class
                : craft.equals("canes") ? CaneSchool.class : RenewalSchool.class;
        List<School> schools = fields.objects("schools").stream()
                .<School>map(school -> kind.cast(RecordReader.read(school, kind.asSubclass(Record.class)))).toList();
        return RecordReader.read(fields, FormPruning.class, Map.of("form", form, "craft", craft, "schools", schools));
    }

    @Override
    public void check(Fields fields) { fields.tellIf(schools.isEmpty(), "schools", "no-school"); }

    /**
     * The work in words for a time of year and a stage of life: the school's own first. Where all canes go in winter
     * there is no cane work after picking.
     */
    public List<Step> steps(School school, String time, StageOfLife life) {
        List<Step> all = new ArrayList<>(school.teaching().steps(time, life));
        boolean none = time.equals("canes") && school instanceof CaneSchool canes && canes.all();
        steps.stream().filter(step -> step.suits(time, life) && !none).forEach(all::add);
        return all;
    }

    /** What is counted: {@code stems}, {@code branches} or {@code canes}. */
    public String counted() {
        return switch (craft) {
            case "canes" -> "canes";
            case "spur" -> "branches";
            default -> "stems";
        };
    }

    /** The stems of a grown bush, or of such a row, that is in order by the default way. */
    public Stems inOrder(Bush bush) {
        return school().target(Bush.of(Stems.NONE).along(bush.metres()));
    }

    /** The same with as many new shoots every year and no stem dying: what is to be cut must not wait for death. */
    public FormPruning undying() {
        return new FormPruning(form, craft, schools, why, steps, newShoots, Optional.empty(), labour);
    }

    /** The default way. */
    public School school() { return schools.get(0); }

    public Optional<School> school(String id) {
        return schools.stream().filter(school -> school.id().equals(id)).findFirst();
    }

    public List<String> schoolIds() { return schools.stream().map(School::id).toList(); }

    /**
     * Minutes that a piece of pruning takes, until the grower's own minutes are known.
     *
     * @param winter the winter cut; also the cane work of a row, where it is done once
     * @param canes taking out fruited canes and tying in new ones
     */
    public record Labour(Optional<Figure> winter, Optional<Figure> summer, Optional<Figure> canes) {
        /** The figure for a time of work; {@code renovation} takes as long as {@code winter}, planting far less. */
        public Optional<Figure> of(String time) {
            return switch (time) {
                case "planting" -> Optional.empty();
                case "summer" -> summer;
                case "canes" -> canes;
                default -> winter;
            };
        }

        /** Minutes for one bush, or for a row of that many metres. */
        public static double minutes(Figure figure, double metres) {
            return figure.unit().equals("min/m") ? figure.is() * metres : figure.is();
        }
    }
}
