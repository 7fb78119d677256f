using System.Globalization;
using Scriban.Runtime;

namespace WireCheck.Starting;

/// <summary>The globals of the template: plain values, and under <c>w</c>, <c>f</c> and <c>part</c> what the shelf gave.</summary>
internal sealed class BoxValues
{
    private readonly Shelf _shelf;
    private readonly double _fuseLoad;
    private double _largestBranch;
    private readonly ScriptObject _wires = [];
    private readonly ScriptObject _fuses = [];
    private readonly ScriptObject _parts = [];

    internal BoxValues(Shelf shelf, double fuseLoad)
    {
        _shelf = shelf;
        _fuseLoad = fuseLoad;
        Set("w", _wires);
        Set("f", _fuses);
        Set("part", _parts);
    }

    /// <summary>What the template sees.</summary>
    internal ScriptObject Globals { get; } = [];

    /// <summary>A value under its own name.</summary>
    internal void Set(string name, object value) => Globals.SetValue(name, value, true);

    /// <summary>A class of parts.</summary>
    internal void Part(string name, string part) => _parts.SetValue(name, part, true);

    /// <summary>The size of a conductor that is good for a current in A.</summary>
    internal void Wire(string key, double amps) => _wires.SetValue(key, _shelf.Wire(key, amps).ToString(), true);

    /// <summary>The rating in A of a branch fuse for a current in A that flows for hours, and at least a rating.</summary>
    internal double Fuse(string name, double amps, double least = 0)
    {
        double rating = Rating($"f-{name}", amps, least);
        _fuses.SetValue(name, Plain(rating), true);
        _largestBranch = Math.Max(_largestBranch, rating);
        return rating;
    }

    /// <summary>The rating in A of the main fuse: for the whole current, and so far above every branch that theirs open first.</summary>
    internal double Main(double amps, double ratio)
    {
        double rating = Rating("main", amps, _largestBranch * ratio);
        _fuses.SetValue("main", Plain(rating), true);
        return rating;
    }

    /// <summary>A standard rating for a current in A, loaded no more than a fuse in a warm box may be.</summary>
    internal double Rating(string key, double amps, double least = 0) => _shelf.Rating(key, Math.Max(amps / _fuseLoad, least));

    /// <summary>A number as a description writes it.</summary>
    internal static string Plain(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
