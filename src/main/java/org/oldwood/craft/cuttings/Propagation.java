package org.oldwood.craft.cuttings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * How a crop is raised from its own wood: its {@code cuttings} section.
 *
 * @param methods the ways; the first that suits a form is its default
 */
public record Propagation(List<Method> methods, PlantingOut plantingOut, HealthSigns health) {
    public Propagation {
        methods = List.copyOf(methods);
    }

    /** Reads the crop's section; empty where the crop has none. */
    public static Optional<Propagation> of(Crop crop) {
        return crop.section("cuttings", Propagation.class, Propagation::read);
    }

    /** The method that the form calls for, if the crop has any. */
    public Optional<Method> methodFor(String form) {
        return methods.stream().filter(method -> method.suits(form)).findFirst();
    }

    /** The method of an id, the one that suits the form first. */
    public Optional<Method> method(String id, String form) {
        List<Method> named =
                methods.stream().filter(method -> method.id().equals(id)).toList();
        return named.stream().filter(method -> method.suits(form)).findFirst().or(() -> named.stream()
                .findFirst());
    }

    /** The forms that a method makes; empty where it makes all, or is not known. */
    public List<String> formsOf(String id) {
        List<Method> named =
                methods.stream().filter(method -> method.id().equals(id)).toList();
        return named.stream().anyMatch(method -> method.forms().isEmpty())
                ? List.of()
                : named.stream()
                        .flatMap(method -> method.forms().stream())
                        .distinct()
                        .toList();
    }

    private static Propagation read(Fields fields) {
        fields.count("format", 1, 1);
        List<Method> methods = new ArrayList<>();
        for (Fields method : fields.objects("methods")) {
            methods.add(MethodReader.read(method));
        }
        Fields out = MethodReader.need(fields, "plantingOut");
        Fields health = MethodReader.need(fields, "health");
        fields.done();
        return new Propagation(methods, plantingOut(out), health(health));
    }

    private static PlantingOut plantingOut(Fields fields) {
        List<PlantingOut.Cut> cuts = new ArrayList<>();
        for (Fields cut : fields.objects("cuts")) {
            cuts.add(new PlantingOut.Cut(
                    cut.oneOf("id", List.of("hard", "light", "none")),
                    cut.text("words"),
                    cut.texts("forms"),
                    Figure.optional(cut, "deeperCm"),
                    Figure.optional(cut, "flowersOffSeasons"),
                    Figure.read(cut, "seasonsAhead"),
                    cut.texts("source")));
            cut.oneOf("seen", Seen.keys());
            cut.done();
        }
        fields.done();
        return new PlantingOut(cuts);
    }

    private static HealthSigns health(Fields fields) {
        List<HealthSigns.Sign> signs = new ArrayList<>();
        for (Fields sign : fields.objects("signs")) {
            signs.add(new HealthSigns.Sign(
                    sign.text("finding"),
                    sign.flag("bars", false),
                    sign.text("words"),
                    sign.texts("source"),
                    Seen.parse(sign.oneOf("seen", Seen.keys()))));
            sign.done();
        }
        HealthSigns health = new HealthSigns(Figure.read(fields, "uninspectedYears"), signs, fields.texts("local"));
        fields.done();
        return health;
    }
}
