using System.Text.RegularExpressions;
using Shouldly;
using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using Xunit;

namespace WireCheck.Tests.Facts;

public class FactCatalogueTests
{
    [Fact]
    public void A_name_stands_once_for_a_kind()
    {
        FactCatalogue.All.GroupBy(f => (f.Kind, f.Name)).Where(g => g.Count() > 1).Select(g => g.Key).ShouldBeEmpty();
    }

    [Fact]
    public void Every_name_is_snake_case_and_every_sentence_ends_with_a_stop()
    {
        FactCatalogue.All.Where(f => !Regex.IsMatch(f.Name, "^[a-z][a-z0-9]*(_[a-z0-9]+)*$") || !f.Sentence.EndsWith('.'))
            .Select(f => f.Name).ShouldBeEmpty();
    }

    [Fact]
    public void Every_kind_of_part_has_facts()
    {
        IEnumerable<Type> kinds = typeof(Part).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Part)) && !t.IsAbstract);
        foreach (Type kind in kinds)
        {
            FactCatalogue.Kinds.ShouldContain(kind.Name == "Cells" ? "cells" : kind.Name.ToLowerInvariant());
        }

        FactCatalogue.Kinds.ShouldContain("breaker");
    }

    [Fact]
    public void For_gives_the_facts_of_a_kind_and_nothing_else()
    {
        FactCatalogue.For("relay").ShouldAllBe(f => f.Kind == "relay");
        FactCatalogue.For("relay").ShouldContain(f => f.Name == "rated_current");
        FactCatalogue.For("teapot").ShouldBeEmpty();
    }
}
