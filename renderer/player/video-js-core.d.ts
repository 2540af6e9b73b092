// The player without its streaming part, which plain files do not need; the package's types cover the whole only.
declare module "video.js/core.es.js" {
  import videojs from "video.js";
  export default videojs;
}
