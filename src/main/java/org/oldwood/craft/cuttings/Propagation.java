package org.oldwood.craft.cuttings;

import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.crop.Crop;

/**
 * How a crop is raised from its own wood: its {@code cuttings} section.
 *
 * @param methods the ways; the first that suits a form is its default
 */
public record Propagation(List<Method> methods, PlantingOut plantingOut, HealthSigns health) {
    public static Optional<Propagation> of(Crop crop) { return crop.section("cuttings", Propagation.class); }

    /** The method that the form calls for, if the crop has any. */
    public Optional<Method> methodFor(String form) {
        return methods.stream().filter(method -> method.suits(form)).findFirst();
    }

    /** The method of an id, the one that suits the form first. */
    public Optional<Method> method(String id, String form) {
        List<Method> named = methods.stream().filter(method -> method.id().equals(id)).toList();
        return named.stream().filter(method -> method.suits(form)).findFirst().or(() -> named.stream().findFirst());
    }

    /** The forms that a method makes; empty where it makes all, or is not known. */
    public List<String> formsOf(String id) {
        List<Method> named = methods.stream().filter(method -> method.id().equals(id)).toList();
        return named.stream().anyMatch(method -> method.forms().isEmpty()) ? List.of()
                : named.stream().flatMap(method -> method.forms().stream()).distinct().toList();
    }
}
