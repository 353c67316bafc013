package org.oldwood.craft.mulching;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.RecordException;

/** The figures of mulching ({@code mulching.json}) and the materials for it. */
public final class MulchTables {
    /** A dog to tell harm by, kg. */
    private static final double DOG_KG = 10;

    private static final String ANY_GROUP = "otherwise";
    private static final List<String> FIGURES = List.of("barrow", "bag", "extraNitrogen", "extraNitrogenBlueberry",
            "extraNitrogenSeasons", "richTimes", "compostMost", "topUpAt", "layMost", "laidUntil");

    private static final List<String> USUAL = List.of("mulch", "acidSoilMulch", "underlay");

    private final Map<String, Mulch> mulches = new LinkedHashMap<>();
    private final Map<String, Underlay> underlays = new LinkedHashMap<>();
    private final Map<String, Figure> gaps = new LinkedHashMap<>();
    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final Map<String, String> usual = new LinkedHashMap<>();

    private MulchTables() {}

    public static MulchTables read(Documents documents) {
        MulchTables all = new MulchTables();
        Fields fields = documents.fields("mulching.json");
        fields.object("collarGap")
                .ifPresent(inner -> inner.keys().forEach(key -> all.gaps.put(key, Figure.read(inner, key))));
        fields.object("usual").ifPresent(inner -> USUAL.forEach(key -> all.usual.put(key, inner.text(key))));
        FIGURES.forEach(name -> all.figures.put(name, Figure.read(fields, name)));
        documents.all("materials").forEach(document -> {
            all.mulches.putAll(RecordReader.byId(document, "mulches", Mulch.class, Mulch::id));
            all.underlays.putAll(RecordReader.byId(document, "underlays", Underlay.class, Underlay::id));
        });
        return all;
    }

    public Optional<Mulch> mulch(String id) { return Optional.ofNullable(mulches.get(id)); }

    public Optional<Underlay> underlay(String id) { return Optional.ofNullable(underlays.get(id)); }

    public List<Mulch> mulches() { return List.copyOf(mulches.values()); }

    /** What to know of a layer: nitrogen that it takes, and a heap too deep. */
    public List<String> remarks(MulchPlan plan) {
        List<String> remarks = new ArrayList<>();
        if (plan.mulch().nitrogenDrawdown() && plan.cubicMetres() > 0) {
            Figure extra = figure("extraNitrogen");
            remarks.add("It takes nitrogen from the soil that it touches: about %s N more for %s; feed first."
                    .formatted(extra.inWords(), figure("extraNitrogenSeasons").inWords()));
        }
        plan.mulch().bale().ifPresent(bale -> remarks.add(flakes(bale)));
        plan.mulch().poison().ifPresent(poison -> remarks.add(harm(poison)));
        if (plan.layCm() > figure("layMost").is()) {
            remarks.add("Deeper than %s a layer may heat and shut out air: lay it in two goes."
                    .formatted(figure("layMost").inWords()));
        }
        return remarks;
    }

    private static String flakes(Mulch.Bale bale) {
        double kg = bale.flakeKg(bale.kg().is());
        return "Open a bale where it lies and carry its flakes: about %s%s of %s kg each."
                .formatted(Math.round(bale.flakes().is()), bale.flakes().seen().beside(), Math.round(kg));
    }

    private static String harm(Mulch.Poison poison) {
        return "Not where dogs go: one of %s kg may fall ill from %s g%s.".formatted(Math.round(DOG_KG),
                Math.round(poison.gramsForSigns(DOG_KG, poison.percent().high())), poison.percent().seen().beside());
    }

    /** The bare ring to leave round a stem, cm, by botanical group. */
    public Figure collarGap(String group) {
        Figure gap = gaps.getOrDefault(group, gaps.get(ANY_GROUP));
        if (gap == null) { throw RecordException.lacks("mulching.json", "collarGap", group, gaps.keySet()); }
        return gap;
    }

    /**
     * The id of what to reckon with where the grower names nothing: {@code mulch}, {@code acidSoilMulch} or
     * {@code underlay}.
     */
    public String usual(String what) {
        String id = usual.get(what);
        if (id == null) { throw new IllegalArgumentException("mulching.json has no usual " + what); }
        return id;
    }

    /** A single figure by its name in the document. */
    public Figure figure(String name) {
        Figure figure = figures.get(name);
        if (figure == null) { throw new IllegalArgumentException("mulching.json has no figure " + name); }
        return figure;
    }
}
