using System.Security.Cryptography;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core;

/// <summary>
/// Remembers what the rooms made of parts of plans, so that a plan that is being moved about is worked out anew only
/// where something moved. A memory changes the time an assessment takes and nothing else. Holds the results used last,
/// at most <see cref="MostKept"/>; may be used from several threads.
/// </summary>
public sealed class AssessorMemory
{
    /// <summary>Results kept at most: some thirty plans of nine stages.</summary>
    public const int MostKept = 270;

    private readonly Lock _one = new();
    private readonly Dictionary<(string Stage, string Part), LinkedListNode<Kept>> _kept = [];
    private readonly LinkedList<Kept> _usedLast = new();

    /// <summary>The result of a stage for a part of a plan: the remembered one, or worked out now and remembered.</summary>
    /// <param name="stage">Name of the stage.</param>
    /// <param name="part">All the stage reads.</param>
    /// <param name="work">The stage, a pure function of the part.</param>
    internal T Recall<T>(string stage, Plan part, Func<Plan, T> work)
        where T : class
    {
        (string, string) key = (stage, Convert.ToHexString(SHA256.HashData(PlanWriter.Write(part))));
        if (Find(key) is T known)
        {
            return known;
        }

        // Outside the lock: two that ask for the same at once both work, and come to the same.
        T made = work(part);
        Keep(key, made);
        return made;
    }

    private object? Find((string, string) key)
    {
        lock (_one)
        {
            if (!_kept.TryGetValue(key, out LinkedListNode<Kept>? node))
            {
                return null;
            }

            _usedLast.Remove(node);
            _usedLast.AddFirst(node);
            return node.Value.Result;
        }
    }

    private void Keep((string, string) key, object result)
    {
        lock (_one)
        {
            if (_kept.ContainsKey(key))
            {
                return;
            }

            _kept[key] = _usedLast.AddFirst(new Kept(key, result));
            if (_usedLast.Count > MostKept)
            {
                _kept.Remove(_usedLast.Last!.Value.Key);
                _usedLast.RemoveLast();
            }
        }
    }

    private sealed record Kept((string, string) Key, object Result);
}
