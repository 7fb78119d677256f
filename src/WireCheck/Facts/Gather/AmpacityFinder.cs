using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Facts.Gather;

/// <summary>Ampacity of conductors as they are laid: size, metal, insulation, bundle and the air around them.</summary>
public sealed class AmpacityFinder
{
    private readonly GatherContext _context;
    private readonly Dictionary<string, int> _loadedInBundle = new(StringComparer.Ordinal);

    internal AmpacityFinder(GatherContext context)
    {
        _context = context;
        double loadedAmps = context.Data.Assumed("loaded_conductor");
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            if (wire.Conductor.Bundle is { } bundle && context.Box.Steady.Any(p => Math.Abs(p.Amps(wire.Element)) > loadedAmps))
            {
                _loadedInBundle[bundle.Value] = _loadedInBundle.GetValueOrDefault(bundle.Value) + 1;
            }
        }
    }

    /// <summary>The question the ampacity tables are asked for a conductor.</summary>
    public AmpacityQuestion Question(Conductor conductor) => new(
        conductor.Size.Value,
        _context.Library.Materials[conductor.Material.Value],
        _context.Library.Insulation[conductor.Insulation.Value].RatedCelsius,
        AmbientOf(conductor),
        BundleCount(conductor));

    /// <summary>Ampacity of a conductor; null for a size thinner than every table's.</summary>
    public Ampacity? Of(Conductor conductor) => _context.Library.Ampacity.Rate(Question(conductor));

    /// <summary>Ampacity in A; 0 where no table has the size.</summary>
    public double Amps(Conductor conductor) => Of(conductor)?.Amps ?? 0;

    /// <summary>Ampacity, A, of a lead without data of its own: the insulation assumed for leads, alone in the box's air or outside it.</summary>
    public double LeadAmps(ConductorSize size) => _context.Library.Ampacity.Rate(new AmpacityQuestion(
        size, _context.Library.Materials["copper"], _context.Data.Assumed("lead_insulation"), _context.HottestInsideCelsius, 1))?.Amps ?? 0;

    /// <summary>Smallest stocked size that carries a current where a conductor lies; null when none does.</summary>
    public ConductorSize? SizeNeeded(Conductor conductor, double amps) =>
        _context.Library.Ampacity.SizeNeeded(amps, Question(conductor));

    /// <summary>Hottest air around a conductor, °C.</summary>
    public double AmbientOf(Conductor conductor) => conductor.Place?.Value == PartPlace.Outside
        ? _context.Pack.Surroundings.Ambient.Value.To.DegreesCelsius
        : _context.HottestInsideCelsius;

    /// <summary>Conductors of its bundle that carry current, itself counted; 1 when it lies alone.</summary>
    public int BundleCount(Conductor conductor) => conductor.Bundle is { } bundle
        ? Math.Max(1, _loadedInBundle.GetValueOrDefault(bundle.Value))
        : 1;
}
