package strickle.store;

import strickle.json.MeshPart;
import strickle.json.Meshes;

/**
 * The meshes that a studio holds.
 *
 * @param entries everything it holds
 */
public record KeptMeshes(Entries entries) implements Meshes {

  @Override
  public byte[] bytes(String name) {
    return entries
        .find(MeshPart.COLLECTION, name)
        .map(thing -> MeshPart.bytes(thing.body()))
        .orElseThrow(() -> Meshes.missing(name));
  }
}
