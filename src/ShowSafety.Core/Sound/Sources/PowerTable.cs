using System.Runtime.Intrinsics;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// Powers by direction as energies in steps of a quarter of a degree, for places asked by the thousand. A straight line
/// between energies lies over one between decibels; where the power still bends over the line, as at the end of a ramp,
/// both ends are raised until it does not: never low at any of the places checked, and high by hundredths of a decibel.
/// </summary>
internal sealed class PowerTable
{
    private const int StepsPerDegree = 4;
    private const int Nodes = (180 * StepsPerDegree) + 1;
    private const int ChecksPerStep = 4;

    private readonly double[] _energies = new double[Nodes * OctaveBand.Count];

    /// <summary>Makes the table of a power by direction.</summary>
    public PowerTable(DirectionalPower power)
    {
        for (int node = 0; node < Nodes; node++)
        {
            power.Energies((double)node / StepsPerDegree, Row(node));
        }

        var raised = new double[_energies.Length];
        Array.Fill(raised, 1);
        for (int check = 0; check < (Nodes - 1) * ChecksPerStep; check++)
        {
            Check(power, (double)check / ChecksPerStep, raised);
        }

        for (int i = 0; i < raised.Length; i++)
        {
            _energies[i] *= raised[i];
        }
    }

    /// <summary>Writes the powers of the eight octave bands in a direction of 0 to 180 degrees as energies.</summary>
    public void Energies(double angleDegrees, Span<double> energies)
    {
        double steps = angleDegrees * StepsPerDegree;
        int node = Math.Clamp((int)steps, 0, Nodes - 2);
        double share = steps - node;
        ReadOnlySpan<double> rows = _energies.AsSpan(node * OctaveBand.Count, 2 * OctaveBand.Count);
        for (int band = 0; band < OctaveBand.Count; band += Vector256<double>.Count)
        {
            Vector256<double> lower = Vector256.Create(rows[band..]);
            Vector256<double> upper = Vector256.Create(rows[(band + OctaveBand.Count)..]);
            (lower + ((upper - lower) * share)).CopyTo(energies[band..]);
        }
    }

    private Span<double> Row(int node) => _energies.AsSpan(node * OctaveBand.Count, OctaveBand.Count);

    private void Check(DirectionalPower power, double steps, double[] raised)
    {
        Span<double> exact = stackalloc double[OctaveBand.Count];
        Span<double> table = stackalloc double[OctaveBand.Count];
        power.Energies(steps / StepsPerDegree, exact);
        Energies(steps / StepsPerDegree, table);
        int first = (int)steps * OctaveBand.Count;
        for (int band = 0; band < exact.Length; band++)
        {
            double factor = exact[band] / Math.Max(table[band], double.Epsilon);
            raised[first + band] = Math.Max(raised[first + band], factor);
            raised[first + OctaveBand.Count + band] = Math.Max(raised[first + OctaveBand.Count + band], factor);
        }
    }
}
