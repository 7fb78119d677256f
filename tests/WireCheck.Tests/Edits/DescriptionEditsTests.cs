using WireCheck.Edits;

namespace WireCheck.Tests.Edits;

/// <summary>One value at a time, in every style a builder writes.</summary>
public sealed class DescriptionEditsTests
{
    [Theory]
    [InlineData("fuses:\n  main: {class: strip, rating: 80 A} # the main one\n", "rating", "60 A", "fuses:\n  main: {class: strip, rating: 60 A} # the main one\n")]
    [InlineData("fuses:\n  main:\n    rating: 80 A   # eighty\n    class: strip\n", "rating", "60 A", "fuses:\n  main:\n    rating: 60 A   # eighty\n    class: strip\n")]
    [InlineData("fuses: {main: {rating: '80 A', class: strip}}", "rating", "60 A", "fuses: {main: {rating: '60 A', class: strip}}")]
    [InlineData("fuses:\n  main: {\"rating\" : \"80 A\"}\n", "rating", "6\"A", "fuses:\n  main: {\"rating\" : \"6\\\"A\"}\n")]
    [InlineData("fuses:\r\n  main:\r\n    rating:\t80 A\r\n", "rating", "60 A", "fuses:\r\n  main:\r\n    rating:\t60 A\r\n")]
    [InlineData("fuses:\n  main: {holder: {rating: 80 A, volts: 32 V}}\n", "holder.rating", "60 A", "fuses:\n  main: {holder: {rating: 60 A, volts: 32 V}}\n")]
    [InlineData("fuses:\n  main: {ends: [a, b]}\n", "ends.1", "c", "fuses:\n  main: {ends: [a, c]}\n")]
    [InlineData("fuses:\n  main:\n    rating:\n    class: strip\n", "rating", "60 A", "fuses:\n  main:\n    rating: 60 A\n    class: strip\n")]
    [InlineData("fuses:\n  main: {rating: 80 A}\n", "rating", "a, b", "fuses:\n  main: {rating: \"a, b\"}\n")]
    public void A_value_that_is_written_is_replaced_where_it_stands(string text, string key, string value, string after)
    {
        NewText(text, new ValueEdit("main", key, value)).ShouldBe(after);
    }

    [Theory]
    [InlineData("fuses:\n  main: {part: blade}\n", "rating", "fuses:\n  main: {part: blade, rating: 60 A}\n")]
    [InlineData("fuses:\n  main: {part: blade,} # c\n", "rating", "fuses:\n  main: {part: blade, rating: 60 A,} # c\n")]
    [InlineData("fuses:\n  main: {part}\n", "rating", "fuses:\n  main: {rating: 60 A, part}\n")]
    [InlineData("fuses:\n  main: { }\n", "rating", "fuses:\n  main: {rating: 60 A }\n")]
    [InlineData("fuses:\n  main:\n", "rating", "fuses:\n  main: {rating: 60 A}\n")]
    [InlineData("fuses:\n  main:   # later\n  aux: {rating: 5 A}", "rating", "fuses:\n  main: {rating: 60 A}   # later\n  aux: {rating: 5 A}")]
    [InlineData("fuses:\n  main:\n    part: blade # c\n\n# next\nbms: {}\n", "rating", "fuses:\n  main:\n    part: blade # c\n    rating: 60 A\n\n# next\nbms: {}\n")]
    [InlineData("fuses:\r\n  main:\r\n    part: blade", "rating", "fuses:\r\n  main:\r\n    part: blade\r\n    rating: 60 A")]
    [InlineData("fuses:\n  main:\n    holder:\n      volts: 32 V\n", "rating", "fuses:\n  main:\n    rating: 60 A\n    holder:\n      volts: 32 V\n")]
    [InlineData("fuses:\n  main:\n    holder:\n      volts: 32 V\n", "holder.rating", "fuses:\n  main:\n    holder:\n      volts: 32 V\n      rating: 60 A\n")]
    [InlineData("fuses:\n  main: {part: blade}\n", "holder.rating", "fuses:\n  main: {part: blade, holder: {rating: 60 A}}\n")]
    [InlineData("fuses:\n  main: {part: blade, holder: }\n", "holder.rating", "fuses:\n  main: {part: blade, holder: {rating: 60 A} }\n")]
    public void A_key_that_is_missing_goes_into_the_parts_own_mapping_in_its_style(string text, string key, string after)
    {
        NewText(text, new ValueEdit("main", key, "60 A")).ShouldBe(after);
    }

    [Fact]
    public void What_defaults_give_is_written_at_the_part_so_that_no_other_part_changes()
    {
        NewText("defaults:\n  conductor: {size: 8 AWG}\nconductors:\n  w1: {from: a.1, to: b.2}\n  w2: {from: a, to: c}\n", new ValueEdit("w1", "size", "6 AWG"))
            .ShouldBe("defaults:\n  conductor: {size: 8 AWG}\nconductors:\n  w1: {from: a.1, to: b.2, size: 6 AWG}\n  w2: {from: a, to: c}\n");
    }

    [Theory]
    [InlineData("size", "6 AWG", "conductors:\n  w9: {to: [a, b], size: 6 AWG, length: [1 m, 2 m]}\n", "w9.size")]
    [InlineData("length", "3 m", "conductors:\n  w9: {to: [a, b], size: 8 AWG, length: [1 m, 3 m]}\n", "w9.length.1")]
    public void A_leg_of_a_daisy_chain_changes_its_own_item_or_what_all_legs_share(string key, string value, string after, string canonical)
    {
        const string text = "conductors:\n  w9: {to: [a, b], size: 8 AWG, length: [1 m, 2 m]}\n";
        ValueEdit edit = new("w9/2", key, value);
        NewText(text, edit).ShouldBe(after);
        ValueEdit named = DescriptionEdits.Of("box.yaml", text).Canonical(edit);
        $"{named.PartId}.{named.Key}".ShouldBe(canonical);
    }

    [Fact]
    public void A_value_of_the_box_itself_is_found_from_the_root()
    {
        const string text = "pack: Box\nsurroundings:\n  enclosure: {walls: plastic}\n";
        NewText(text, new ValueEdit("", "surroundings.enclosure.hold_down", "yes"))
            .ShouldBe("pack: Box\nsurroundings:\n  enclosure: {walls: plastic, hold_down: yes}\n");
        NewText(text, new ValueEdit("", "settings.drop_limit", "3 %")).ShouldBe("pack: Box\nsettings: {drop_limit: 3 %}\nsurroundings:\n  enclosure: {walls: plastic}\n");
    }

    [Fact]
    public void Several_keys_for_one_mapping_go_in_together()
    {
        NewText(
            "fuses:\n  main: {}\n  aux:\n",
            new ValueEdit("main", "holder.volts", "58 V"), new ValueEdit("main", "rating", "30 A"), new ValueEdit("main", "holder.rating", "30 A"),
            new ValueEdit("aux", "class", "blade"), new ValueEdit("aux", "rating", "5 A"))
            .ShouldBe("fuses:\n  main: {holder: {volts: 58 V, rating: 30 A}, rating: 30 A}\n  aux: {class: blade, rating: 5 A}\n");
    }

    [Theory]
    [InlineData("fuses:\n  main: {rating: *r}\nx: &r 5 A\n", "the description cannot be read")]
    [InlineData("x: &r 5 A\nfuses:\n  main: {rating: *r}\n", "it is shared by the alias *r; write it out at this part first")]
    [InlineData("fuses:\n  main: {rating: &r 5 A}\n  aux: {rating: *r}\n", "it is shared by the alias *r; write it out at this part first")]
    [InlineData("fuses:\n  main: &m {rating: 5 A}\n  aux: *m\n", "it is shared by the alias *m; write it out at this part first")]
    [InlineData("x: &f\n  main: {rating: 5 A}\nfuses: *f\n", "the description has no part main")]
    [InlineData("fuses: &f\n  main: {rating: 5 A}\nx: *f\n", "it is shared by the alias *f; write it out at this part first")]
    [InlineData("fuses:\n  main: {rating: &r 5 A}\n", "it carries an anchor or a tag")]
    [InlineData("fuses:\n  main: {rating: !!str 5 A}\n", "it carries an anchor or a tag")]
    [InlineData("fuses:\n  main: {rating: {a: 1}}\n", "more than one value stands there")]
    [InlineData("fuses:\n  main:\n    rating: >-\n      80\n      A\n    # comment\n    class: strip\n", "it is written as a block of text")]
    [InlineData("fuses:\n  main: 5 A\n", "there is no place for 'rating'")]
    public void What_is_shared_or_no_single_value_is_refused_and_said(string text, string reason)
    {
        EditPlan plan = DescriptionEdits.Of("box.yaml", text).Plan([new ValueEdit("main", "rating", "60 A")]);
        plan.Refused.ShouldHaveSingleItem().Reason.ShouldBe(reason);
        plan.NewText().ShouldBe(text);
    }

    [Fact]
    public void A_change_tells_its_place_and_the_old_value()
    {
        TextChange change = DescriptionEdits.Of("box.yaml", "fuses:\n  main: {rating: \"80 A\"}\n")
            .Plan([new ValueEdit("main", "rating", "60 A")]).Changes.ShouldHaveSingleItem();
        change.Start.ToString().ShouldBe("box.yaml:2:18");
        change.End.ToString().ShouldBe("box.yaml:2:24");
        change.OldValue.ShouldBe("80 A");
        change.NewText.ShouldBe("\"60 A\"");
    }

    [Fact]
    public void Of_two_edits_that_want_one_value_to_differ_the_first_stands_and_the_other_is_told()
    {
        EditPlan plan = DescriptionEdits.Of("box.yaml", "fuses:\n  main: {rating: 80 A}\n")
            .Plan([new ValueEdit("main", "rating", "60 A"), new ValueEdit("main", "rating", "60 A"), new ValueEdit("main", "rating", "40 A")]);
        plan.Changes.ShouldHaveSingleItem().NewText.ShouldBe("60 A");
        plan.Refused.ShouldHaveSingleItem().Reason.ShouldBe("another edit makes it 60 A");
    }

    [Fact]
    public void A_value_that_is_already_so_changes_nothing()
    {
        const string text = "fuses:\n  main: {rating: 80 A}\n";
        EditPlan plan = DescriptionEdits.Of("box.yaml", text).Plan([new ValueEdit("main", "rating", "80 A")]);
        plan.Changes.ShouldBeEmpty();
        plan.Refused.ShouldBeEmpty();
    }

    private static string NewText(string text, params ValueEdit[] edits)
    {
        EditPlan plan = DescriptionEdits.Of("box.yaml", text).Plan(edits);
        plan.Refused.ShouldBeEmpty();
        return plan.NewText();
    }
}
